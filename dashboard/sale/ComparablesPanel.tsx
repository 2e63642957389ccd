import { useRef, useState } from "preact/hooks";
import type { Find } from "../finds/find.ts";
import { Removed } from "../ownPrices/Removed.tsx";
import type { Vocabulary } from "../ownPrices/vocabulary.ts";
import { ownPrices } from "../state/ownPrices.ts";
import {
  COMPARABLE_ALL_PRICES,
  COMPARABLE_NONE,
  COMPARABLE_NONE_FACTS,
  COMPARABLE_READ_AS,
  COMPARABLE_TITLE,
  COMPARABLE_YOUR_PRICES,
  comparablesShown,
  leftOutAbroad,
} from "../words/comparables.ts";
import { showMore } from "../words/ownSales.ts";
import { shareSentence } from "../words/ownShare.ts";
import { askedSentence } from "../words/sale.ts";
import { ComparableCard } from "./ComparableCard.tsx";
import type { ComparableRow } from "./comparableRows.ts";
import { QuickSale } from "./QuickSale.tsx";
import type { Value } from "./states.ts";

interface ComparablesPanelProps {
  readonly find: Find;
  readonly value: Value;
  readonly rows: readonly ComparableRow[];
  readonly currency: string;
  readonly vocabulary: Vocabulary;
}

const A_PAGE = 10;

/** What each of the user's own sales does to the price of this bike, and one more by hand. */
export function ComparablesPanel({ find, value, rows, currency, vocabulary }: ComparablesPanelProps) {
  const [shown, setShown] = useState(A_PAGE);
  const heading = useRef<HTMLHeadingElement>(null);
  const adverts = rows.filter(({ sale }) => sale.kind === "asked").length;
  const abroad = ownPrices.sales.value.filter((sale) => sale.currency !== currency).length;
  const remove = (id: string) => {
    ownPrices.removeSale(id);
    // The button that had the focus is gone with its card.
    heading.current?.focus();
  };
  return (
    <section class="panel" aria-labelledby="own-title">
      <h2 id="own-title" ref={heading} tabIndex={-1}>
        {rows.length === 0 ? COMPARABLE_NONE : COMPARABLE_TITLE}
      </h2>
      <p class="small">
        {rows.length === 0 ? (
          <>
            {COMPARABLE_NONE_FACTS} <a href="/prices">{COMPARABLE_YOUR_PRICES}</a>.
          </>
        ) : (
          <>
            {shareSentence(value.ownShare, value.comparables.length)} {COMPARABLE_READ_AS}{" "}
            {askedSentence(value.askedFactor, adverts)} <a href="/prices">{COMPARABLE_ALL_PRICES}</a>
          </>
        )}
      </p>
      {abroad > 0 && <p class="note">{leftOutAbroad(abroad, currency)}</p>}
      <Removed />
      {rows.length > 0 && (
        <ul class="ownlist" aria-labelledby="own-title">
          {rows.slice(0, shown).map((row) => (
            <ComparableCard
              key={row.sale.id}
              row={row}
              find={find.id}
              currency={currency}
              vocabulary={vocabulary}
              onRemove={() => remove(row.sale.id)}
            />
          ))}
        </ul>
      )}
      {rows.length > shown && (
        <p class="links">
          <span class="small">{comparablesShown(shown, rows.length)}</span>
          <button type="button" class="plainbtn" onClick={() => setShown(shown + 5 * A_PAGE)}>
            {showMore(Math.min(5 * A_PAGE, rows.length - shown))}
          </button>
        </p>
      )}
      <QuickSale find={find} currency={currency} vocabulary={vocabulary} open={rows.length === 0} />
    </section>
  );
}
