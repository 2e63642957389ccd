import { ownPrices } from "../state/ownPrices.ts";
import {
  DEMO_FINDS,
  DEMO_OR,
  DEMO_START_WITH_OWN,
  DEMO_USE_PRICES,
  heldAgainst,
  inventedPrices,
  inventedWorkshop,
  OWN_FIND,
} from "../words/demoLine.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";

/** Stands under the masthead wherever an invented find or a price from the demo data is shown. */
export function DemoLine({ own = false, called = OWN_FIND }: { own?: boolean; called?: string }) {
  const partly = ownPrices.sales.value.length > 0;
  if (own) {
    return (
      <p class="demo">
        <b>{inventedPrices(partly)}</b> {heldAgainst(called, partly)}{" "}
        <a href="/prices">{PLACE_NAMES.prices}</a>
      </p>
    );
  }
  return (
    <p class="demo">
      <span>
        <b>{DEMO_FINDS}</b> {inventedWorkshop(partly)}
      </span>{" "}
      <a href="/describe">{DEMO_START_WITH_OWN}</a> {DEMO_OR} <a href="/prices">{DEMO_USE_PRICES}</a>.
    </p>
  );
}
