import { useEffect, useRef, useState } from "preact/hooks";
import { goal, isGoal, setGoal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { DONE } from "../words/common.ts";
import { GOAL_CHANGE, GOAL_HINT, GOAL_LABEL, GOAL_UNIT, GOAL_YOURS, goalBounds } from "../words/goal.ts";
import { currencySign, goalMoney } from "../words/money.ts";
import { NumberField } from "./NumberField.tsx";

/** The flag: the user's hourly goal, always in sight, and changed here. */
export function GoalPill() {
  const [open, setOpen] = useState(false);
  const [typed, setTyped] = useState<number | undefined>(undefined);
  const box = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const value = goal.value;
  const currency = reference.value?.currency;

  useEffect(() => {
    if (!open) return;
    box.current?.querySelector("input")?.select();
    const away = (event: Event) => {
      if (!box.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener("pointerdown", away);
    return () => document.removeEventListener("pointerdown", away);
  }, [open]);

  if (value === null || currency === undefined) return <div class="goal" />;
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const change = (next: number | undefined) => {
    setTyped(next);
    if (isGoal(next)) setGoal(next);
  };
  const refused = typed !== undefined && !isGoal(typed);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what the button opened
    <div class="goal" ref={box} onKeyDown={(event) => event.key === "Escape" && open && close()}>
      <button ref={button} type="button" class="pill" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="flag">{goalMoney(value, currency)}/h</span>
        <span>
          <span class="sr">{GOAL_YOURS} </span>
          {GOAL_CHANGE}
        </span>
      </button>
      {open && (
        <form
          class="goalbox panel"
          onSubmit={(event) => {
            event.preventDefault();
            close();
          }}
        >
          <NumberField
            label={GOAL_LABEL}
            value={value}
            onValue={change}
            before={currencySign(currency)}
            unit={GOAL_UNIT}
            step={1}
            hint={GOAL_HINT}
            messages={refused ? [goalBounds(0, 500, currency)] : []}
          />
          <button type="submit" class="btn quiet">
            {DONE}
          </button>
        </form>
      )}
    </div>
  );
}
