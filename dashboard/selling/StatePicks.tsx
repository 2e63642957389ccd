import type { WholeState } from "../api/types.ts";
import { Picks } from "../parts/Picks.tsx";
import { aboutPrice } from "../words/bandLines.ts";
import { SOLD_IN_STATE } from "../words/soldState.ts";
import type { PricedWhole } from "./wholeStates.ts";

/** The states in which it can be sold whole. */
export function StatePicks(props: {
  states: readonly PricedWhole[];
  state: WholeState;
  currency: string;
  onState: (state: WholeState) => void;
}) {
  const { states, state, currency, onState } = props;
  return (
    <div class="statepicks">
      <Picks
        legend={SOLD_IN_STATE}
        choices={states.map((one) => ({
          value: one.state,
          label: one.name,
          detail: aboutPrice(one.band.p50, currency),
        }))}
        value={state}
        onValue={(next) => onState(next as WholeState)}
        layout="grid"
      />
    </div>
  );
}
