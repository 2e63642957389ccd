import { useState } from "preact/hooks";
import type { Find } from "../finds/find.ts";
import { SaleEntryForm } from "../ownPrices/SaleEntryForm.tsx";
import type { Sale } from "../ownPrices/sale.ts";
import { useSaleEntry } from "../ownPrices/saleEntry.ts";
import { CONDITIONS } from "../ownPrices/saleWords.ts";
import type { CHOICE_FIELDS, Vocabulary } from "../ownPrices/vocabulary.ts";
import { Picks } from "../parts/Picks.tsx";
import { UNKNOWN } from "../words/common.ts";
import {
  COMPARABLE_YOUR_PRICES,
  QUICK_SALE_ANY_OTHER,
  QUICK_SALE_CONDITION,
  QUICK_SALE_DESCRIBED,
  QUICK_SALE_LIKENESS,
  QUICK_SALE_OF_ITS_KIND,
  QUICK_SALE_OF_ITS_KIND_DETAIL,
  QUICK_SALE_SAME,
  QUICK_SALE_TITLE,
} from "../words/comparables.ts";

interface QuickSaleProps {
  readonly find: Find;
  readonly currency: string;
  readonly vocabulary: Vocabulary;
  /** Unfolded at first. */
  readonly open: boolean;
}

const LIKENESS = [
  { value: "same", label: QUICK_SALE_SAME },
  { value: "kind", label: QUICK_SALE_OF_ITS_KIND, detail: QUICK_SALE_OF_ITS_KIND_DETAIL },
];

/** What makes a bike one of its kind. */
const OF_A_KIND = [
  "category",
  "era",
  "frameMaterial",
  "componentTier",
] as const satisfies (typeof CHOICE_FIELDS)[number][];

/** The sale of a bike like this one, in a few words. It is kept with all others under /prices. */
export function QuickSale({ find, currency, vocabulary, open }: QuickSaleProps) {
  const [likeness, setLikeness] = useState("same");
  const entry = useSaleEntry(vocabulary, currency, (sale) => likeThis(sale, find, likeness === "same"));
  // The first sale must not fold the form up under the hand that adds the second.
  const [unfolded] = useState(open);
  const { cell, put, messages } = entry;
  return (
    <details class="byhand" open={unfolded}>
      <summary>{QUICK_SALE_TITLE}</summary>
      <SaleEntryForm
        entry={entry}
        currency={currency}
        fields={
          <>
            <Picks
              legend={QUICK_SALE_LIKENESS}
              choices={LIKENESS}
              value={likeness}
              onValue={(value) => setLikeness(value ?? "same")}
              layout="grid"
            />
            <Picks
              legend={QUICK_SALE_CONDITION}
              choices={CONDITIONS}
              value={cell("condition")}
              onValue={(value) => put("condition", value)}
              none={UNKNOWN}
              messages={messages("condition")}
              layout="grid"
            />
          </>
        }
      >
        <p class="hint">
          {QUICK_SALE_ANY_OTHER} <a href="/prices">{COMPARABLE_YOUR_PRICES}</a>
          {QUICK_SALE_DESCRIBED}
        </p>
      </SaleEntryForm>
    </details>
  );
}

function likeThis(sale: Sale, find: Find, sameModel: boolean): Sale {
  const kind = Object.fromEntries(
    OF_A_KIND.flatMap((field) => {
      const word = find.body.find[field];
      return word === undefined ? [] : [[field, word]];
    }),
  );
  return { ...kind, ...sale, ...(sameModel ? { name: find.name, sameModelAs: [find.id] } : {}) };
}
