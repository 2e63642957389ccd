import { Choose } from "../parts/Picks.tsx";
import { DESIRABILITY, ORIGINALITY } from "../words/fields.ts";
import { SaleEntryForm } from "./SaleEntryForm.tsx";
import { useSaleEntry } from "./saleEntry.ts";
import { CONDITIONS, STATES } from "./saleWords.ts";
import { CHOICE_FIELDS, type Vocabulary } from "./vocabulary.ts";

/** One sale by hand. Price, kind and date are enough. */
export function SaleForm({ vocabulary, currency }: { vocabulary: Vocabulary; currency: string }) {
  const entry = useSaleEntry(vocabulary, currency);
  const { cell, put } = entry;
  return (
    <details class="byhand">
      <summary>Add one sale by hand</summary>
      <SaleEntryForm
        entry={entry}
        currency={currency}
        fields={
          <div class="field">
            <label for="sale-name">What you call it (optional)</label>
            <input
              id="sale-name"
              type="text"
              autocomplete="off"
              maxLength={120}
              value={cell("name") ?? ""}
              onInput={(event) => put("name", event.currentTarget.value)}
            />
          </div>
        }
      >
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
      </SaleEntryForm>
    </details>
  );
}
