import { useId } from "preact/hooks";
import type { Choice } from "../api/types.ts";
import { UNKNOWN } from "../words/common.ts";
import { Wrong } from "./NumberField.tsx";

const SHORT = 11;

interface PicksProps {
  readonly legend: string;
  readonly choices: readonly (Choice & { readonly detail?: string })[];
  readonly value: string | undefined;
  readonly onValue: (value: string | undefined) => void;
  /** Label of the choice that takes the answer back; absent where one must be made. */
  readonly none?: string;
  readonly messages?: readonly string[];
  /** Side by side as they fit, or one below the other. */
  readonly layout: "grid" | "list";
  /** The legend is spoken only: a heading says the same. */
  readonly quiet?: boolean;
}

/** One of several, as large buttons. */
export function Picks(props: PicksProps) {
  const { legend, choices, value, onValue, none, messages = [], layout, quiet } = props;
  const id = useId();
  return (
    <fieldset
      class={`picks ${layout}${isShort(choices) ? " short" : ""}`}
      {...(messages.length > 0 ? { "aria-describedby": `${id}-wrong` } : {})}
    >
      <legend class={quiet === true ? "sr" : ""}>{legend}</legend>
      <div class="options">
        {choices.map((choice) => (
          <Pick
            key={choice.value}
            group={id}
            choice={choice}
            chosen={value === choice.value}
            onValue={onValue}
          />
        ))}
        {none !== undefined && (
          <Pick
            group={id}
            choice={{ value: "", label: none }}
            chosen={value === undefined}
            onValue={() => onValue(undefined)}
          />
        )}
      </div>
      <Wrong id={`${id}-wrong`} messages={messages} />
    </fieldset>
  );
}

/** Whether every label is a word or two, so that more of them stand side by side. */
function isShort(choices: PicksProps["choices"]): boolean {
  return choices.every(({ label }) => label.length <= SHORT);
}

interface PickProps {
  readonly group: string;
  readonly choice: Choice & { readonly detail?: string };
  readonly chosen: boolean;
  readonly onValue: (value: string) => void;
}

function Pick({ group, choice, chosen, onValue }: PickProps) {
  return (
    <label class={choice.value === "" ? "pick none" : "pick"}>
      <input
        type="radio"
        name={group}
        value={choice.value}
        checked={chosen}
        onChange={() => onValue(choice.value)}
      />
      <span>
        <b>{choice.label}</b>
        {choice.detail !== undefined && <small>{choice.detail}</small>}
      </span>
    </label>
  );
}

/** One of several, folded, with "Unknown" first. */
export function Choose(props: {
  label: string;
  choices: readonly Choice[];
  value: string | undefined;
  onValue: (value: string | undefined) => void;
  messages?: readonly string[];
  none?: string;
}) {
  const { label, choices, value, onValue, messages = [], none = UNKNOWN } = props;
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value ?? ""}
        onChange={(event) =>
          onValue(event.currentTarget.value === "" ? undefined : event.currentTarget.value)
        }
        aria-invalid={messages.length > 0}
        {...(messages.length > 0 ? { "aria-describedby": `${id}-wrong` } : {})}
      >
        <option value="">{none}</option>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
      <Wrong id={`${id}-wrong`} messages={messages} />
    </div>
  );
}
