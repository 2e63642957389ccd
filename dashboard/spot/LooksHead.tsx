import type { Check } from "../api/types.ts";
import { isMade } from "../checks/made.ts";
import { spokes } from "../checks/spokes.ts";
import { Wheel } from "../signs/Wheel.tsx";
import { capital } from "../words/count.ts";
import { describedKind } from "../words/description.ts";
import { factsWords } from "../words/spot.ts";
import { SPOT_CHANGE } from "../words/spotTexts.ts";
import type { StageProps } from "./OnTheSpot.tsx";
import { SpotHead } from "./SpotHead.tsx";
import { looksOf } from "./trail.ts";

interface LooksHeadProps extends StageProps {
  readonly checks: readonly Check[];
  /** Everything is stopped: no money is shown. */
  readonly isStopped: boolean;
  readonly focus: boolean;
}

/** The find's name, what is asked for it, how long was looked, and the wheel of what was. */
export function LooksHead(props: LooksHeadProps) {
  const { own, known, trail, checks, isStopped, focus, onReopen } = props;
  const { observations, price, paid, attributes } = own.answers;
  const name = own.name.trim() || describedKind(attributes, known);
  const seen = looksOf(trail).filter(({ how }) => how === "seen");
  const made = new Set(seen.map(({ check }) => check));
  const spent = checks.reduce((sum, { id, minutes }) => sum + (made.has(id) ? minutes : 0), 0);
  const facts = factsWords({ price, paid: paid === true, looks: made.size, spent }, known.currency);
  const wheel = spokes(known.checks, checks, (check) => isMade(observations[check]));
  return (
    <SpotHead title={name} heading={name} focus={focus} sign={<Wheel spokes={wheel} size={44} />}>
      <p class="small">
        {!isStopped && (
          <>
            {paid === true ? (
              facts.price
            ) : (
              <button type="button" class="inline" onClick={() => onReopen("price")}>
                {facts.price}
                <span class="sr">{SPOT_CHANGE}</span>
              </button>
            )}{" "}
            {"\u00b7"}{" "}
          </>
        )}
        {isStopped ? capital(facts.looks) : facts.looks}
      </p>
    </SpotHead>
  );
}
