import type { CourseOutcome, ReportedPlan } from "../api/types.ts";
import { capital } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { FIND_TEXTS } from "../words/findTexts.ts";
import { billed } from "../words/money.ts";
import { partAmount } from "../words/partAmount.ts";

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
  if (shoppingList.length === 0) return <p class="small">{FIND_TEXTS.nothingToBuy}</p>;
  const total = shoppingList.reduce((sum, { price, quantity }) => sum + price * quantity, 0);
  return (
    <details class="shopping">
      <summary>
        Shopping list: {shoppingList.length} {shoppingList.length === 1 ? "line" : "lines"},{" "}
        {billed(total, currency)}
      </summary>
      <div class="scrolled">
        <table>
          <caption class="sr">
            Shopping list to {COURSE_WORDS[course.course].name.toLowerCase()}, invented prices but where it
            says yours
          </caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">How much</th>
              <th scope="col" class="right">
                One
              </th>
              <th scope="col" class="right">
                Sum
              </th>
            </tr>
          </thead>
          <tbody>
            {shoppingList.map(({ part, name, quantity, unit, price }) => (
              <tr key={part}>
                <th scope="row">
                  {capital(name)} {ownParts.has(part) && <span class="tag">{FIND_TEXTS.yourPrice}</span>}
                </th>
                <td>{partAmount(quantity, unit)}</td>
                <td class="right">{billed(price, currency)}</td>
                <td class="right">{billed(price * quantity, currency)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">In all</th>
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
