import { NumberField, Wrong } from "../parts/NumberField.tsx";
import { Picks } from "../parts/Picks.tsx";
import { currencySign } from "../words/money.ts";
import { SALE_DAY, SALE_PAID_OR_ASKED, SALE_PRICE } from "../words/ownSales.ts";
import type { SaleEntry } from "./saleEntry.ts";
import { KINDS } from "./saleWords.ts";

/** The three that every sale needs: price, day, and whether it was paid or asked. */
export function NeededFields({ entry, currency }: { entry: SaleEntry; currency: string }) {
  const { cell, put, messages, today } = entry;
  const price = cell("price");
  return (
    <>
      <NumberField
        label={SALE_PRICE}
        value={price === undefined ? undefined : Number(price)}
        onValue={(value) => put("price", value === undefined ? undefined : String(value))}
        before={currencySign(currency)}
        messages={messages("price")}
      />
      <DayField value={cell("date") ?? ""} today={today} onValue={put} messages={messages("date")} />
      <Picks
        legend={SALE_PAID_OR_ASKED}
        choices={KINDS}
        value={cell("kind")}
        onValue={(value) => put("kind", value)}
        messages={messages("kind")}
        layout="grid"
      />
    </>
  );
}

function DayField(props: {
  value: string;
  today: string;
  onValue: (column: "date", value: string) => void;
  messages: readonly string[];
}) {
  const { value, today, onValue, messages } = props;
  return (
    <div class="field">
      <label for="sale-date">{SALE_DAY}</label>
      <input
        id="sale-date"
        type="date"
        max={today}
        value={value}
        onInput={(event) => onValue("date", event.currentTarget.value)}
        aria-invalid={messages.length > 0}
        {...(messages.length > 0 ? { "aria-describedby": "sale-date-wrong" } : {})}
      />
      <Wrong id="sale-date-wrong" messages={messages} />
    </div>
  );
}
