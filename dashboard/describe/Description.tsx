import { type Answers, NEEDED, withAnswer, withAttribute } from "../answers/answers.ts";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { AttributeName, Reference } from "../api/types.ts";
import { NumberField, Wrong } from "../parts/NumberField.tsx";
import { Choose, Picks } from "../parts/Picks.tsx";
import { MARKING } from "../words/checkTexts.ts";
import {
  detailsGiven,
  FORM_BUILD,
  FORM_DESIRABILITY,
  FORM_MONTH,
  FORM_MORE,
  FORM_NO_MONTH,
  FORM_ORIGINALITY,
  FORM_PAID,
  FORM_PRICE_HINT,
  FORM_TRAVEL_HINT,
  FORM_WHAT_ASKED,
  FORM_WHAT_IS_IT,
  MIN,
} from "../words/describeForm.ts";
import { DESIRABILITY, FIELD_NAMES, FIGURE_NAMES, MONTHS, ORIGINALITY } from "../words/fields.ts";
import { currencySign } from "../words/money.ts";

export interface DescribeProps {
  readonly answers: Answers;
  readonly known: Reference;
  readonly fault: Fault | null;
  readonly onAnswers: (answers: Answers) => void;
}

/** The four that are always needed, as large picks. */
export function FourPicks({ answers, known, fault, onAnswers }: DescribeProps) {
  return (
    <section class="panel" aria-labelledby="picks-title">
      <h2 id="picks-title">{FORM_WHAT_IS_IT}</h2>
      {NEEDED.map((name) => (
        <Picks
          key={name}
          legend={FIELD_NAMES[name]}
          choices={known.attributes[name]}
          value={answers.attributes[name]}
          onValue={(value) => onAnswers(withAttribute(answers, name, value))}
          messages={messagesAt(fault, `/find/${name}`)}
          layout="grid"
        />
      ))}
    </section>
  );
}

/** What is asked for it, whether it is paid, and when it would be sold. */
export function Purchase({ answers, known, fault, onAnswers }: DescribeProps) {
  const wrong = messagesAt(fault, "/find/purchase/paid");
  return (
    <section class="panel" aria-labelledby="price-title">
      <h2 id="price-title">{FORM_WHAT_ASKED}</h2>
      <div class="fields">
        <NumberField
          label={FIGURE_NAMES["/find/purchase/price"]}
          value={answers.price}
          onValue={(value) => onAnswers(withAnswer(answers, "price", value))}
          before={currencySign(known.currency)}
          messages={messagesAt(fault, "/find/purchase/price")}
          hint={FORM_PRICE_HINT}
        />
        <div class="field">
          <label class="tick">
            <input
              type="checkbox"
              checked={answers.paid === true}
              onChange={(event) =>
                onAnswers(withAnswer(answers, "paid", event.currentTarget.checked ? true : undefined))
              }
            />
            <span>{FORM_PAID}</span>
          </label>
          <Wrong id="paid-wrong" messages={wrong} />
        </div>
        <NumberField
          label={FIGURE_NAMES["/find/purchase/travelMinutes"]}
          value={answers.travelMinutes}
          onValue={(value) => onAnswers(withAnswer(answers, "travelMinutes", value))}
          unit={MIN}
          messages={messagesAt(fault, "/find/purchase/travelMinutes")}
          hint={FORM_TRAVEL_HINT}
        />
        <NumberField
          label={FIGURE_NAMES["/find/purchase/travelCost"]}
          value={answers.travelCost}
          onValue={(value) => onAnswers(withAnswer(answers, "travelCost", value))}
          before={currencySign(known.currency)}
          messages={messagesAt(fault, "/find/purchase/travelCost")}
        />
        <Choose
          label={FORM_MONTH}
          choices={MONTHS.map((label, i) => ({ value: String(i + 1), label }))}
          value={answers.month === undefined ? undefined : String(answers.month)}
          onValue={(value) =>
            onAnswers(withAnswer(answers, "month", value === undefined ? undefined : Number(value)))
          }
          messages={messagesAt(fault, "/workshop/month")}
          none={FORM_NO_MONTH}
        />
      </div>
    </section>
  );
}

const FIRST: readonly AttributeName[] = ["kept", "sizeClass", "completeness", "place"];
const BUILD: readonly AttributeName[] = [
  "brakeType",
  "drivetrain",
  "steering",
  "barType",
  "fork",
  "stepThrough",
  "fixedGear",
  "hasCarbon",
  "forkMaterial",
  "postMaterial",
  "barMaterial",
  "rimMaterial",
  "bottomBracket",
  "bbThread",
  "cranks",
  "hub",
];

/** Everything else about it: optional, and unknown until it is said. */
export function FurtherDetails(props: DescribeProps) {
  const { answers, fault, onAnswers } = props;
  const said = [...FIRST, ...BUILD].filter((name) => answers.attributes[name] !== undefined).length;
  return (
    <details class="panel fold">
      <summary>
        <span class="foldname">{FORM_MORE}</span>
        <span class="small">{detailsGiven(said)}</span>
      </summary>
      <div class="fields">
        {FIRST.map((name) => (
          <Attribute key={name} name={name} {...props} />
        ))}
        <Choose
          label={FORM_ORIGINALITY}
          choices={ORIGINALITY}
          value={answers.originality === undefined ? undefined : String(answers.originality)}
          onValue={(value) => onAnswers(withAnswer(answers, "originality", asNumber(value)))}
          messages={messagesAt(fault, "/find/originality")}
        />
        <Choose
          label={FORM_DESIRABILITY}
          choices={DESIRABILITY}
          value={answers.desirability === undefined ? undefined : String(answers.desirability)}
          onValue={(value) => onAnswers(withAnswer(answers, "desirability", asNumber(value)))}
          messages={messagesAt(fault, "/find/desirability")}
        />
      </div>
      <h3>{FORM_BUILD}</h3>
      <div class="fields">
        {BUILD.map((name) => (
          <Attribute key={name} name={name} {...props} />
        ))}
        <NumberField
          label={FIGURE_NAMES["/find/rearSprockets"]}
          value={answers.rearSprockets}
          onValue={(value) => onAnswers(withAnswer(answers, "rearSprockets", value))}
          messages={messagesAt(fault, "/find/rearSprockets")}
        />
        <TyreMarking {...props} />
      </div>
    </details>
  );
}

function Attribute({ name, answers, known, fault, onAnswers }: DescribeProps & { name: AttributeName }) {
  return (
    <Choose
      label={FIELD_NAMES[name]}
      choices={known.attributes[name]}
      value={answers.attributes[name]}
      onValue={(value) => onAnswers(withAttribute(answers, name, value))}
      messages={messagesAt(fault, `/find/${name}`)}
    />
  );
}

function TyreMarking({ answers, fault, onAnswers }: DescribeProps) {
  const messages = messagesAt(fault, "/find/tyreMarking");
  return (
    <div class="field">
      <label for="tyre-marking">{MARKING}</label>
      <input
        id="tyre-marking"
        type="text"
        autocomplete="off"
        placeholder="37-622"
        value={answers.tyreMarking ?? ""}
        onInput={(event) => {
          const text = event.currentTarget.value;
          onAnswers(withAnswer(answers, "tyreMarking", text.trim() === "" ? undefined : text));
        }}
        aria-invalid={messages.length > 0}
        aria-describedby="tyre-marking-wrong"
      />
      <Wrong id="tyre-marking-wrong" messages={messages} />
    </div>
  );
}

function asNumber(value: string | undefined): number | undefined {
  return value === undefined ? undefined : Number(value);
}
