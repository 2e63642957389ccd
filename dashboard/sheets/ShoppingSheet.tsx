import type { AppraisalBody, PlannedPart, Reference } from "../api/types.ts";
import { IN_ALL } from "../words/common.ts";
import { capital, listed } from "../words/count.ts";
import type { LengthUnit } from "../words/length.ts";
import { billed } from "../words/money.ts";
import { partAmount } from "../words/partAmount.ts";
import { INVENTED_PRICES, OWN_PRICES, SHEETS } from "../words/sheets.ts";
import {
  SHOPPING_HEAD_HOW_MUCH,
  SHOPPING_HEAD_ONE,
  SHOPPING_HEAD_SUM,
  SHOPPING_HEAD_WHAT,
} from "../words/shopping.ts";
import {
  SHOPPING_SHEET_FOR_PART,
  SHOPPING_SHEET_MEASURE,
  SHOPPING_SHEET_PAID,
  SHOPPING_SHEET_READ,
  SHOPPING_SHEET_SEEN_IN,
  SHOPPING_SHEET_SIZE,
  SHOPPING_SHEET_YOURS,
  toBuy,
} from "../words/shoppingSheet.ts";
import { Box } from "./Box.tsx";
import { SheetHead } from "./SheetHead.tsx";
import { type SizeRow, sizesToMeasure } from "./shopping.ts";

interface ShoppingSheetProps {
  readonly bike: string;
  readonly facts: string;
  /** Says that the find is invented; empty where it is not. */
  readonly invented: string;
  readonly list: readonly PlannedPart[];
  readonly currency: string;
  readonly known: Reference;
  readonly body: AppraisalBody;
  /** How lengths that were measured are written. */
  readonly lengths: LengthUnit;
  /** Parts that were worked out with a price of the user's own. */
  readonly ownParts: ReadonlySet<string>;
}

/** What to buy, with its price, and the sizes to find out before any of it is ordered. */
export function ShoppingSheet(props: ShoppingSheetProps) {
  const { bike, facts, invented, list, currency, known, body, lengths, ownParts } = props;
  const total = list.reduce((sum, { price, quantity }) => sum + price * quantity, 0);
  const sizes = sizesToMeasure(list, known, body, lengths);
  const prices = list.some(({ part }) => ownParts.has(part)) ? OWN_PRICES : INVENTED_PRICES;
  return (
    <section class="shoppingsheet">
      <SheetHead
        title={SHEETS.shopping}
        bike={bike}
        facts={facts}
        invented={`${invented} ${prices}`.trim()}
      />
      {sizes.length > 0 && <Sizes sizes={sizes} />}
      <h2>{toBuy(currency)}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{SHOPPING_HEAD_WHAT}</th>
            <th scope="col">{SHOPPING_HEAD_HOW_MUCH}</th>
            <th scope="col" class="right">
              {SHOPPING_HEAD_ONE}
            </th>
            <th scope="col" class="right">
              {SHOPPING_HEAD_SUM}
            </th>
            <th scope="col">{SHOPPING_SHEET_PAID}</th>
          </tr>
        </thead>
        <tbody>
          {list.map(({ part, name, quantity, unit, price }) => (
            <tr key={part}>
              <th scope="row">
                <Box /> {capital(name)}{" "}
                {ownParts.has(part) && <span class="mark">{SHOPPING_SHEET_YOURS}</span>}
              </th>
              <td>{partAmount(quantity, unit)}</td>
              <td class="right">{billed(price, currency)}</td>
              <td class="right">{billed(price * quantity, currency)}</td>
              <td class="write" />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{IN_ALL}</th>
            <td />
            <td />
            <td class="right">{billed(total, currency)}</td>
            <td class="write" />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Sizes({ sizes }: { sizes: readonly SizeRow[] }) {
  return (
    <>
      <h2>{SHOPPING_SHEET_MEASURE}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{SHOPPING_SHEET_SIZE}</th>
            <th scope="col">{SHOPPING_SHEET_FOR_PART}</th>
            <th scope="col">{SHOPPING_SHEET_SEEN_IN}</th>
            <th scope="col">{SHOPPING_SHEET_READ}</th>
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ what, parts, check, known }) => (
            <tr key={what}>
              <th scope="row">
                <Box ticked={known !== null} /> {what}
              </th>
              <td>{capital(listed([...new Set(parts)]))}</td>
              <td>{check ?? ""}</td>
              <td class="write">{known ?? ""}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
