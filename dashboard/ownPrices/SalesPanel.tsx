import { useRef, useState } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import { showMore } from "../words/ownSales.ts";
import { salesShown, salesTitle } from "../words/salesPanel.ts";
import { newestFirst } from "./newest.ts";
import { SaleForm } from "./SaleForm.tsx";
import { SaleRow } from "./SaleRow.tsx";
import type { Vocabulary } from "./vocabulary.ts";

const A_PAGE = 25;

/** The user's own sales, newest first, and one more by hand. */
export function SalesPanel({ vocabulary, currency }: { vocabulary: Vocabulary; currency: string }) {
  const [shown, setShown] = useState(A_PAGE);
  const heading = useRef<HTMLHeadingElement>(null);
  const sales = newestFirst(ownPrices.sales.value);
  const remove = (id: string) => {
    ownPrices.removeSale(id);
    // The button that had the focus is gone with its row.
    heading.current?.focus();
  };
  return (
    <section class="panel" aria-labelledby="sales-title">
      <h2 id="sales-title" ref={heading} tabIndex={-1}>
        {salesTitle(sales.length)}
      </h2>
      {sales.length > 0 && (
        <ul class="ownlist" aria-labelledby="sales-title">
          {sales.slice(0, shown).map((sale) => (
            <SaleRow key={sale.id} sale={sale} vocabulary={vocabulary} onRemove={() => remove(sale.id)} />
          ))}
        </ul>
      )}
      {sales.length > shown && (
        <p class="links">
          <span class="small">{salesShown(shown, sales.length)}</span>
          <button type="button" class="plainbtn" onClick={() => setShown(shown + 4 * A_PAGE)}>
            {showMore(Math.min(4 * A_PAGE, sales.length - shown))}
          </button>
        </p>
      )}
      <SaleForm vocabulary={vocabulary} currency={currency} />
    </section>
  );
}
