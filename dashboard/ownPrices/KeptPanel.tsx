import { ownPrices } from "../state/ownPrices.ts";
import { KEPT_FACTS, KEPT_PRICES, KEPT_REMOVE_ALL, KEPT_SALES, KEPT_TITLE } from "../words/priceFiles.ts";
import { download } from "./download.ts";
import { newestFirst } from "./newest.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** Takes one's own sales and prices out as files, or away. */
export function KeptPanel({ vocabulary }: { vocabulary: Vocabulary }) {
  const sales = ownPrices.sales.value;
  const prices = ownPrices.partPrices.value;
  if (sales.length + prices.length === 0) return null;
  const save = async (name: string, write: (files: typeof import("./files.ts")) => string) => {
    const files = await import("./files.ts").catch(() => null);
    if (files !== null) download(name, write(files));
  };
  return (
    <section class="panel" aria-labelledby="kept-title">
      <h2 id="kept-title">{KEPT_TITLE}</h2>
      <p class="small">{KEPT_FACTS}</p>
      <div class="acts">
        {sales.length > 0 && (
          <button
            type="button"
            class="btn quiet"
            onClick={() =>
              void save("sales.csv", (files) => files.salesToCsv(newestFirst(sales), vocabulary))
            }
          >
            {KEPT_SALES}
          </button>
        )}
        {prices.length > 0 && (
          <button
            type="button"
            class="btn quiet"
            onClick={() => void save("prices.csv", (files) => files.priceBookToCsv(prices, vocabulary))}
          >
            {KEPT_PRICES}
          </button>
        )}
        <button type="button" class="btn quiet" onClick={() => ownPrices.removeAll()}>
          {KEPT_REMOVE_ALL}
        </button>
      </div>
    </section>
  );
}
