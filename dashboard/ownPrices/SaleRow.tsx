import { useState } from "preact/hooks";
import { finds } from "../state/finds.ts";
import { ownPrices } from "../state/ownPrices.ts";
import { REMOVE } from "../words/common.ts";
import { goalMoney } from "../words/money.ts";
import { saleFacts, saleName } from "../words/ownPrices.ts";
import { sameModelAs, sameModelLegend } from "../words/salesPanel.ts";
import type { KeptSale } from "./sale.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** One sale of the user's own: what is known of it, the finds it is the same model as, and its removal. */
export function SaleRow(props: { sale: KeptSale; vocabulary: Vocabulary; onRemove: () => void }) {
  const { sale, vocabulary, onRemove } = props;
  const name = saleName(sale, vocabulary);
  return (
    <li>
      <div class="ownhead">
        <b>{name}</b>
        <b class="nowrap">{goalMoney(sale.price, sale.currency)}</b>
      </div>
      <p class="small">{saleFacts(sale, vocabulary)}</p>
      <div class="ownacts">
        <SameModel sale={sale} name={name} />
        <button type="button" class="plainbtn" onClick={onRemove}>
          {REMOVE}
          <span class="sr"> {name}</span>
        </button>
      </div>
    </li>
  );
}

/** The finds that are the same model as a sale, to be ticked. */
function SameModel({ sale, name }: { sale: KeptSale; name: string }) {
  const [open, setOpen] = useState(false);
  const chosen = sale.sameModelAs ?? [];
  const named = finds.value.filter(({ id }) => chosen.includes(id)).map((find) => find.name);
  const tick = (id: string, on: boolean) =>
    ownPrices.setSameModel(sale.id, on ? [...chosen, id] : chosen.filter((one) => one !== id));
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="sr">{name}: </span>
        {sameModelAs(named)}
      </summary>
      {open && (
        <fieldset class="ticks">
          <legend class="sr">{sameModelLegend(name)}</legend>
          {finds.value.map((find) => (
            <label key={find.id} class="tick">
              <input
                type="checkbox"
                checked={chosen.includes(find.id)}
                onChange={(event) => tick(find.id, event.currentTarget.checked)}
              />
              <span>{find.name}</span>
            </label>
          ))}
        </fieldset>
      )}
    </details>
  );
}
