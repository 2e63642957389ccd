import { Choose } from "../parts/Picks.tsx";
import { DESIRABILITY, ORIGINALITY } from "../words/fields.ts";
import {
  SALE_BY_HAND,
  SALE_CONDITION,
  SALE_DESIRABILITY,
  SALE_KNOWN,
  SALE_NAME,
  SALE_ORIGINALITY,
  SALE_STATE,
} from "../words/saleForm.ts";
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
      <summary>{SALE_BY_HAND}</summary>
      <SaleEntryForm
        entry={entry}
        currency={currency}
        fields={
          <div class="field">
            <label for="sale-name">{SALE_NAME}</label>
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
        <h3>{SALE_KNOWN}</h3>
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
            label={SALE_STATE}
            choices={STATES}
            value={cell("state")}
            onValue={(value) => put("state", value)}
          />
          <Choose
            label={SALE_CONDITION}
            choices={CONDITIONS}
            value={cell("condition")}
            onValue={(value) => put("condition", value)}
          />
          <Choose
            label={SALE_ORIGINALITY}
            choices={ORIGINALITY}
            value={cell("originality")}
            onValue={(value) => put("originality", value)}
          />
          <Choose
            label={SALE_DESIRABILITY}
            choices={DESIRABILITY}
            value={cell("desirability")}
            onValue={(value) => put("desirability", value)}
          />
        </div>
      </SaleEntryForm>
    </details>
  );
}
