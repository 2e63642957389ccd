import type { ComponentChildren } from "preact";
import { SALE_ADD } from "../words/ownSales.ts";
import { NeededFields } from "./SaleFields.tsx";
import type { SaleEntry } from "./saleEntry.ts";

interface SaleEntryFormProps {
  readonly entry: SaleEntry;
  readonly currency: string;
  /** Fields beside price, day and whether it was paid or asked. */
  readonly fields: ComponentChildren;
  /** What stands between the fields and the button. */
  readonly children: ComponentChildren;
}

/** The form of one sale: what every sale needs, what else is asked here, the button, and what came of it. */
export function SaleEntryForm({ entry, currency, fields, children }: SaleEntryFormProps) {
  return (
    <form
      ref={entry.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        entry.add();
      }}
    >
      <div class="fields">
        <NeededFields entry={entry} currency={currency} />
        {fields}
      </div>
      {children}
      <p class="acts">
        <button type="submit" class="btn">
          {SALE_ADD}
        </button>
      </p>
      <p class="working" role="status">
        {entry.said}
      </p>
    </form>
  );
}
