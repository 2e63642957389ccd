import { ownPrices } from "../state/ownPrices.ts";

/** Stands under the masthead wherever an invented find or a price from the demo data is shown. */
export function DemoLine({ own = false, called = "Your own find" }: { own?: boolean; called?: string }) {
  const partly = ownPrices.sales.value.length > 0;
  if (own) {
    return (
      <p class="demo">
        {partly ? (
          <>
            <b>Partly invented prices.</b> {called} is held against your own sales and invented demo ones.
          </>
        ) : (
          <>
            <b>Invented prices.</b> {called} is held against invented demo sales; no price here is a market
            price.
          </>
        )}{" "}
        <a href="/prices">Your prices</a>
      </p>
    );
  }
  return (
    <p class="demo">
      <span>
        <b>Invented finds.</b> The Lockhouse workshop in Brindlehythe does not exist;{" "}
        {partly
          ? "prices come from your own sales and invented demo ones."
          : "no price here is a market price."}
      </span>{" "}
      <a href="/describe">Start with my own</a> or <a href="/prices">use my own prices</a>.
    </p>
  );
}
