import { useEffect, useRef } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import { many } from "../words/ownPrices.ts";

/** Says what was just removed, and takes it back. */
export function Removed() {
  const before = ownPrices.removed.value;
  const button = useRef<HTMLButtonElement>(null);
  const none = ownPrices.sales.value.length + ownPrices.partPrices.value.length === 0;
  // Removing everything takes away the button that did it: the focus goes to what takes it back.
  useEffect(() => {
    if (before !== null && none) button.current?.focus();
  }, [before, none]);
  const sales = before === null ? 0 : before.sales.length - ownPrices.sales.value.length;
  const prices = before === null ? 0 : before.partPrices.length - ownPrices.partPrices.value.length;
  const what = [sales > 0 ? many(sales, "sale") : "", prices > 0 ? many(prices, "price") : ""];
  return (
    <div role="status">
      {before !== null && (
        <p class="removed">
          <span>Removed {what.filter((part) => part !== "").join(" and ")}.</span>
          <button ref={button} type="button" class="btn quiet" onClick={() => ownPrices.undo()}>
            Take it back
          </button>
        </p>
      )}
    </div>
  );
}
