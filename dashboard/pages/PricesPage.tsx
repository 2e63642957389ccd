import { KeptPanel } from "../ownPrices/KeptPanel.tsx";
import { PriceBookPanel } from "../ownPrices/PriceBookPanel.tsx";
import { Removed } from "../ownPrices/Removed.tsx";
import { SalesPanel } from "../ownPrices/SalesPanel.tsx";
import { UploadPanel } from "../ownPrices/UploadPanel.tsx";
import { Heading } from "../parts/Heading.tsx";
import { ownPrices, vocabulary } from "../state/ownPrices.ts";
import { reference } from "../state/reference.ts";
import { pricesTitle } from "../words/ownPrices.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { PRICES_FACTS, PRICES_TROUBLE_UNKEPT, PRICES_TROUBLE_UNREADABLE } from "../words/pricesPage.ts";

/** Which prices are my own? Read from files or added by hand. */
export function PricesPage() {
  const words = vocabulary.value;
  const currency = reference.value?.currency;
  return (
    <main class="page" id="main">
      <p class="crumb">
        <a href="/">{PLACE_NAMES.finds}</a> / {PLACE_NAMES.prices}
      </p>
      <Heading title={PLACE_NAMES.prices}>
        {pricesTitle(ownPrices.sales.value.length, ownPrices.partPrices.value.length)}
      </Heading>
      <p class="facts">{PRICES_FACTS}</p>
      <PricesTrouble />
      <Removed />
      {words !== null && currency !== undefined && (
        <div class="two prices">
          <div class="a">
            <UploadPanel vocabulary={words} currency={currency} />
            <SalesPanel vocabulary={words} currency={currency} />
          </div>
          <div class="b1">
            <PriceBookPanel vocabulary={words} currency={currency} />
            <KeptPanel vocabulary={words} />
          </div>
        </div>
      )}
    </main>
  );
}

/** What went wrong with keeping them in the browser. */
function PricesTrouble() {
  const trouble = ownPrices.trouble.value;
  if (trouble === null) return null;
  return (
    <p class="note" role="status">
      {trouble === "unreadable" ? PRICES_TROUBLE_UNREADABLE : PRICES_TROUBLE_UNKEPT}
    </p>
  );
}
