import type { SellingPlan } from "../api/types.ts";
import { Blank } from "../sheets/Blank.tsx";
import { outOf } from "../words/chance.ts";
import { capital } from "../words/count.ts";
import { askedMoney, CHART_WORDS, lowestMoney, weekWords } from "../words/selling.ts";
import { sellingFacts } from "../words/sellingFacts.ts";
import { marketWords } from "../words/sellingSheet.ts";
import { stretches } from "./path.ts";

interface PlanSheetProps {
  readonly plan: SellingPlan;
  /** Whether the lowest offers are printed too. */
  readonly shown: boolean;
  readonly title: string;
  /** The find and its state. */
  readonly called: string;
  /** What is invented. */
  readonly note: string;
  /** Address of the chart; null where there is none. */
  readonly picture: string | null;
}

/** The price plan on one sheet of A4. */
export function PlanSheet({ plan, shown, title, called, note, picture }: PlanSheetProps) {
  const { path, currency, market } = plan;
  return (
    <section class="plansheet">
      <h1>{title}</h1>
      <p>
        <b>{called}</b>
      </p>
      <p>{note}</p>
      {picture !== null && <img src={picture} alt="" />}
      <p>
        {CHART_WORDS.read}
        {shown && ` ${CHART_WORDS.readLowest}`}
      </p>
      <div class="plancolumns">
        <div>
          <table>
            <thead>
              <tr>
                <th>When</th>
                <th>Ask</th>
                {shown && <th>Take at least</th>}
                <th>Sold by then</th>
              </tr>
            </thead>
            <tbody>
              {stretches(path).map((stretch) => (
                <tr key={stretch.from}>
                  <td>{capital(weekWords(stretch))}</td>
                  <td>{askedMoney(stretch.price, currency)}</td>
                  {shown && <td>{lowestRange(stretch, currency)}</td>}
                  <td>{outOf(stretch.sold, 10)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <div>
          <h2>What it comes to</h2>
          <ul>
            {sellingFacts(plan).map(({ name, figure, more }) => (
              <li key={name}>
                {name}: {figure}, {more}.
              </li>
            ))}
          </ul>
          <h2>Terms</h2>
          <p>{marketWords(market, currency)}</p>
        </div>
      </div>
      <Blank label="Listed on (week 1 begins)" />
    </section>
  );
}

function lowestRange(
  { lowest: [first, last], price }: ReturnType<typeof stretches>[number],
  currency: string,
) {
  const [from, to] = [lowestMoney(first, price, currency), lowestMoney(last, price, currency)];
  return from === to ? from : `${from}, later ${to}`;
}
