import { useEffect, useRef } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import { removedWords, SALE_TAKE_BACK } from "../words/ownSales.ts";

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
  return (
    <div role="status">
      {before !== null && (
        <p class="removed">
          <span>{removedWords(sales, prices)}</span>
          <button ref={button} type="button" class="btn quiet" onClick={() => ownPrices.undo()}>
            {SALE_TAKE_BACK}
          </button>
        </p>
      )}
    </div>
  );
}
