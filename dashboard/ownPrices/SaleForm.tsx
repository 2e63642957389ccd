import { useRef, useState } from "preact/hooks";
import { NumberField, Wrong } from "../parts/NumberField.tsx";
import { Choose, Picks } from "../parts/Picks.tsx";
import { ownPrices } from "../state/ownPrices.ts";
import { DESIRABILITY, ORIGINALITY } from "../words/fields.ts";
import { currencySign } from "../words/money.ts";
import { localDay } from "./days.ts";
import { type Draft, emptyDraft, saleOf } from "./draft.ts";
import { CONDITIONS, KINDS, STATES } from "./saleWords.ts";
import { CHOICE_FIELDS, type Vocabulary } from "./vocabulary.ts";

/** One sale by hand. Price, kind and date are enough. */
export function SaleForm({ vocabulary, currency }: { vocabulary: Vocabulary; currency: string }) {
  const today = localDay(new Date());
  const [draft, setDraft] = useState<Draft>(emptyDraft(today));
  const [wrong, setWrong] = useState<Readonly<Record<string, string>>>({});
  const [said, setSaid] = useState("");
  const form = useRef<HTMLFormElement>(null);
  const put = (column: string, cell: string | undefined) => {
    setDraft({ ...draft, [column]: cell ?? "" });
    setWrong({ ...wrong, [column]: "" });
    setSaid("");
  };
  const messages = (column: string) => (wrong[column] ? [wrong[column]] : []);
  const cell = (column: string) => (draft[column] ? draft[column] : undefined);

  const add = () => {
    const read = saleOf(draft, vocabulary, today, currency);
    if ("wrong" in read) {
      setWrong(read.wrong);
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
      return;
    }
    const { added, over } = ownPrices.addSales([read.sale]);
    if (added === 0) {
      setSaid(
        over > 0 ? "Not added: there is room for 5,000 sales." : "Not added: the same sale is kept already.",
      );
      return;
    }
    setDraft(emptyDraft(draft.date ?? today));
    setSaid("Added.");
  };

  return (
    <details class="byhand">
      <summary>Add one sale by hand</summary>
      <form
        ref={form}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <div class="fields">
          <NumberField
            label="Price"
            value={cell("price") === undefined ? undefined : Number(cell("price"))}
            onValue={(value) => put("price", value === undefined ? undefined : String(value))}
            before={currencySign(currency)}
            messages={messages("price")}
          />
          <DayField value={draft.date ?? ""} today={today} onValue={put} messages={messages("date")} />
          <Picks
            legend="Was that paid or asked?"
            choices={KINDS}
            value={cell("kind")}
            onValue={(value) => put("kind", value)}
            messages={messages("kind")}
            layout="grid"
          />
          <div class="field">
            <label for="sale-name">What you call it (optional)</label>
            <input
              id="sale-name"
              type="text"
              autocomplete="off"
              maxLength={120}
              value={draft.name ?? ""}
              onInput={(event) => put("name", event.currentTarget.value)}
            />
          </div>
        </div>
        <h3>What is known of it (optional)</h3>
        <div class="fields">
          {CHOICE_FIELDS.map((field) => (
            <Choose
              key={field}
              label={vocabulary.labels[field]}
              choices={vocabulary.choices[field]}
              value={cell(field)}
              onValue={(value) => put(field, value)}
            />
          ))}
          <Choose
            label="State"
            choices={STATES}
            value={cell("state")}
            onValue={(value) => put("state", value)}
          />
          <Choose
            label="Condition"
            choices={CONDITIONS}
            value={cell("condition")}
            onValue={(value) => put("condition", value)}
          />
          <Choose
            label="How original was it?"
            choices={ORIGINALITY}
            value={cell("originality")}
            onValue={(value) => put("originality", value)}
          />
          <Choose
            label="Was anything about it sought after?"
            choices={DESIRABILITY}
            value={cell("desirability")}
            onValue={(value) => put("desirability", value)}
          />
        </div>
        <p class="acts">
          <button type="submit" class="btn">
            Add the sale
          </button>
        </p>
        <p class="working" role="status">
          {said}
        </p>
      </form>
    </details>
  );
}

function DayField(props: {
  value: string;
  today: string;
  onValue: (column: "date", value: string) => void;
  messages: readonly string[];
}) {
  const { value, today, onValue, messages } = props;
  return (
    <div class="field">
      <label for="sale-date">Day of the sale or the advert</label>
      <input
        id="sale-date"
        type="date"
        max={today}
        value={value}
        onInput={(event) => onValue("date", event.currentTarget.value)}
        aria-invalid={messages.length > 0}
        {...(messages.length > 0 ? { "aria-describedby": "sale-date-wrong" } : {})}
      />
      <Wrong id="sale-date-wrong" messages={messages} />
    </div>
  );
}
