import { useRef } from "preact/hooks";
import { withBought } from "../answers/soFar.ts";
import { type Fault, messagesAt } from "../api/fault.ts";
import type { BoughtPart } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { BEGUN_BOUGHT, BEGUN_WORTH_AGAIN, stillToBuy } from "../words/begun.ts";
import { capital } from "../words/count.ts";
import { FIGURE_NAMES } from "../words/fields.ts";
import { billed, currencySign } from "../words/money.ts";
import { partAmount, unitWords } from "../words/partAmount.ts";
import { type ThingRow, thingRows } from "./rows.ts";
import type { ListProps } from "./WorkBegun.tsx";

/** Parts to tick as bought, each with what one would be worth again. */
export function BoughtList(props: ListProps & { fault: Fault | null }) {
  const { soFar, onChange, course, known, fault } = props;
  const order = useRef<readonly string[]>([]);
  const rows = thingRows(order.current, course?.plan?.shoppingList ?? [], soFar.bought, known);
  order.current = rows.map(({ part }) => part);
  // As they are asked about: without what the catalogue does not hold.
  const asked = soFar.bought.filter(({ part }) => known.parts.some(({ id }) => id === part));
  if (rows.length === 0) return null;
  return (
    <fieldset class="begunlist">
      <legend>{BEGUN_BOUGHT}</legend>
      {rows.map((row) => (
        <Thing
          key={row.part}
          row={row}
          currency={known.currency}
          wrong={(field) => {
            const at = asked.findIndex(({ part }) => part === row.part);
            return messagesAt(fault, `/find/soFar/bought/${at}/${field}`);
          }}
          onBought={(bought) => onChange(withBought(soFar, row.part, bought))}
        />
      ))}
      <p class="hint">{BEGUN_WORTH_AGAIN}</p>
    </fieldset>
  );
}

interface ThingProps {
  readonly row: ThingRow;
  readonly currency: string;
  /** What is wrong with a field of it, from the API. */
  readonly wrong: (field: string) => readonly string[];
  readonly onBought: (bought: Omit<BoughtPart, "part"> | null) => void;
}

function Thing({ row, currency, wrong, onBought }: ThingProps) {
  const { name, unit, bought, needed } = row;
  const cost =
    needed === null
      ? ""
      : `${partAmount(needed.quantity, unit)}, ${billed(needed.price * needed.quantity, currency)}`;
  const counted = unitWords(unit);
  return (
    <div class="thing">
      <label class="tick">
        <input
          type="checkbox"
          checked={bought !== null}
          onChange={(event) =>
            onBought(event.currentTarget.checked ? { quantity: needed?.quantity ?? 1, reuseValue: 0 } : null)
          }
        />
        <span>
          {capital(name)}
          {cost !== "" && <span class="small">{bought === null ? cost : stillToBuy(cost)}</span>}
        </span>
      </label>
      {bought !== null && (
        <div class="fields">
          <NumberField
            label={`${FIGURE_NAMES["/find/soFar/bought/*/quantity"]}${counted === "" ? "" : `, ${counted}`}: ${name}`}
            value={bought.quantity}
            onValue={(quantity) => quantity !== undefined && onBought({ ...bought, quantity })}
            messages={wrong("quantity")}
          />
          <NumberField
            label={`${FIGURE_NAMES["/find/soFar/bought/*/reuseValue"]}: ${name}`}
            value={bought.reuseValue}
            onValue={(value) => onBought({ ...bought, reuseValue: value ?? 0 })}
            before={currencySign(currency)}
            messages={wrong("reuseValue")}
          />
        </div>
      )}
    </div>
  );
}
