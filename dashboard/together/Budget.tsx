import { useEffect, useId, useState } from "preact/hooks";
import { NumberField } from "../parts/NumberField.tsx";
import { setTerms } from "../state/set.ts";
import { type BudgetName, isAmount, MOST } from "../state/setTerms.ts";
import { budgetBounds, exactly, NO_LIMIT, onBudget } from "../words/togetherTerms.ts";
import { STEPS } from "./reaches.ts";

interface BudgetProps {
  readonly budget: BudgetName;
  readonly name: string;
  readonly reach: number;
  /** Shown before or behind the figure. */
  readonly before?: string;
  readonly unit?: string;
  /** The amount as it is spoken: "8 h". */
  readonly say: (amount: number) => string;
  /** What the answer says of this budget. */
  readonly lines: readonly string[];
}

/** One budget: a slider, the exact figure beside it, or no limit. */
export function Budget({ budget, name, reach, before, unit, say, lines }: BudgetProps) {
  const id = useId();
  const { amount, limited } = setTerms.terms.value[budget];
  const [typed, setTyped] = useState<number | undefined>(amount);
  useEffect(() => setTyped(amount), [amount]);
  const set = (change: { amount?: number; limited?: boolean }) =>
    setTerms.put({ [budget]: { amount, limited, ...change } });
  const type = (next: number | undefined) => {
    setTyped(next);
    if (isAmount(budget, next)) set({ amount: next });
  };
  const refused = isAmount(budget, typed) ? [] : [budgetBounds(MOST[budget], budget === "slots")];
  return (
    <div class="budget">
      <label for={id} class="budgetname">
        {name}
      </label>
      <label class="tick nolimit">
        <input
          type="checkbox"
          checked={!limited}
          onChange={(event) => set({ limited: !event.currentTarget.checked })}
        />
        <span>
          {NO_LIMIT}
          <span class="sr"> {onBudget(name)}</span>
        </span>
      </label>
      {limited && (
        <>
          <input
            id={id}
            class="slide"
            type="range"
            min={0}
            max={reach}
            step={STEPS[budget]}
            value={amount}
            aria-valuetext={say(amount)}
            onInput={(event) => set({ amount: Number(event.currentTarget.value) })}
          />
          <NumberField
            label={exactly(name)}
            value={typed}
            onValue={type}
            messages={refused}
            {...(before === undefined ? {} : { before })}
            {...(unit === undefined ? {} : { unit })}
          />
        </>
      )}
      <p class="small">{lines.join(" ")}</p>
    </div>
  );
}
