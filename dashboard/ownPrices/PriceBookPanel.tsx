import { useRef, useState } from "preact/hooks";
import { NumberField } from "../parts/NumberField.tsx";
import { Choose } from "../parts/Picks.tsx";
import { ownPrices } from "../state/ownPrices.ts";
import { REMOVE } from "../words/common.ts";
import { billed, currencySign } from "../words/money.ts";
import {
  BOOK_ADD,
  BOOK_CHOOSE,
  BOOK_COST,
  BOOK_FACTS,
  BOOK_NO_COST,
  BOOK_NO_PART,
  BOOK_PART,
  bookTitle,
  perUnit,
} from "../words/priceBook.ts";
import { price as readPrice } from "./cells.ts";
import { localDay } from "./days.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What parts cost the user, and one more by hand. */
export function PriceBookPanel({ vocabulary, currency }: { vocabulary: Vocabulary; currency: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const named = new Map(vocabulary.parts.map((part) => [part.id, part]));
  const nameOf = (part: string) => named.get(part)?.name ?? part;
  const unitOf = (part: string) => named.get(part)?.unit ?? "each";
  const prices = [...ownPrices.partPrices.value].sort((a, b) => nameOf(a.part).localeCompare(nameOf(b.part)));
  const remove = (part: string) => {
    ownPrices.removePartPrice(part);
    heading.current?.focus();
  };
  return (
    <section class="panel" aria-labelledby="book-title">
      <h2 id="book-title" ref={heading} tabIndex={-1}>
        {bookTitle(prices.length)}
      </h2>
      <p class="small">{BOOK_FACTS}</p>
      {prices.length > 0 && (
        <ul class="ownlist" aria-labelledby="book-title">
          {prices.map(({ part, price, currency: of }) => (
            <li key={part}>
              <div class="ownhead priced">
                <span>{nameOf(part)}</span>
                <b class="nowrap">
                  {billed(price, of)}
                  {perUnit(unitOf(part))}
                </b>
                <button type="button" class="plainbtn" onClick={() => remove(part)}>
                  {REMOVE}
                  <span class="sr"> {nameOf(part)}</span>
                </button>
              </div>
            </li>
          ))}
        </ul>
      )}
      <PriceForm vocabulary={vocabulary} currency={currency} />
    </section>
  );
}

/** The price of one part by hand; it replaces the one that was there. */
function PriceForm({ vocabulary, currency }: { vocabulary: Vocabulary; currency: string }) {
  const [part, setPart] = useState<string | undefined>(undefined);
  const [price, setPrice] = useState<number | undefined>(undefined);
  const [wrong, setWrong] = useState<{ part?: string; price?: string }>({});
  const parts = vocabulary.parts
    .map(({ id, name, unit }) => ({ value: id, label: unit === "each" ? name : `${name} (${unit})` }))
    .sort((a, b) => a.label.localeCompare(b.label));

  const add = () => {
    const terms = { today: localDay(new Date()), currency, commaSeparates: true };
    const read = price === undefined ? { wrong: BOOK_NO_COST } : readPrice(String(price), terms);
    if (part === undefined || "wrong" in read) {
      setWrong({
        ...(part === undefined ? { part: BOOK_NO_PART } : {}),
        ...("wrong" in read ? { price: read.wrong } : {}),
      });
      return;
    }
    ownPrices.putPartPrices([{ part, price: read.value, currency }]);
    setPart(undefined);
    setPrice(undefined);
    setWrong({});
  };
  return (
    <form
      class="priceform"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div class="fields">
        <Choose
          label={BOOK_PART}
          choices={parts}
          value={part}
          none={BOOK_CHOOSE}
          onValue={setPart}
          messages={wrong.part === undefined ? [] : [wrong.part]}
        />
        <NumberField
          label={BOOK_COST}
          value={price}
          onValue={setPrice}
          before={currencySign(currency)}
          messages={wrong.price === undefined ? [] : [wrong.price]}
        />
      </div>
      <p class="acts">
        <button type="submit" class="btn quiet">
          {BOOK_ADD}
        </button>
      </p>
    </form>
  );
}
