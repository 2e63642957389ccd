import type { CourseOutcome, ReportedPlan } from "../api/types.ts";
import { IN_ALL } from "../words/common.ts";
import { capital } from "../words/count.ts";
import { billed } from "../words/money.ts";
import { partAmount } from "../words/partAmount.ts";
import {
  NOTHING_TO_BUY,
  SHOPPING_HEAD_HOW_MUCH,
  SHOPPING_HEAD_ONE,
  SHOPPING_HEAD_SUM,
  SHOPPING_HEAD_WHAT,
  shoppingCaption,
  shoppingSummary,
  YOUR_PRICE,
} from "../words/shopping.ts";

/** What to buy for the work of a course, summed exactly. */
export function ShoppingList({
  course,
  plan,
  currency,
  ownParts,
}: {
  course: CourseOutcome;
  plan: ReportedPlan;
  currency: string;
  /** Parts that were worked out with a price of the user's own. */
  ownParts: ReadonlySet<string>;
}) {
  const { shoppingList } = plan;
  if (shoppingList.length === 0) return <p class="small">{NOTHING_TO_BUY}</p>;
  const total = shoppingList.reduce((sum, { price, quantity }) => sum + price * quantity, 0);
  return (
    <details class="shopping">
      <summary>{shoppingSummary(shoppingList.length, total, currency)}</summary>
      <div class="scrolled">
        <table>
          <caption class="sr">{shoppingCaption(course.course)}</caption>
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
            </tr>
          </thead>
          <tbody>
            {shoppingList.map(({ part, name, quantity, unit, price }) => (
              <tr key={part}>
                <th scope="row">
                  {capital(name)} {ownParts.has(part) && <span class="tag">{YOUR_PRICE}</span>}
                </th>
                <td>{partAmount(quantity, unit)}</td>
                <td class="right">{billed(price, currency)}</td>
                <td class="right">{billed(price * quantity, currency)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{IN_ALL}</th>
              <td />
              <td />
              <td class="right">{billed(total, currency)}</td>
            </tr>
          </tfoot>
        </table>
      </div>
    </details>
  );
}
