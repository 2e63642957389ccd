import type { SellingPlan } from "../api/types.ts";
import { Blank } from "../sheets/Blank.tsx";
import { fineChance } from "../words/chance.ts";
import { capital } from "../words/count.ts";
import { askedMoney, CHART_WORDS, lowestMoney, weekWords } from "../words/selling.ts";
import { sellingFacts } from "../words/sellingFacts.ts";
import { marketWords } from "../words/sellingSheet.ts";
import {
  fromTo,
  PLAN_COMES_TO,
  PLAN_HEAD_ASK,
  PLAN_HEAD_SOLD,
  PLAN_HEAD_TAKE,
  PLAN_HEAD_WHEN,
  PLAN_LISTED_ON,
  PLAN_TERMS,
} from "../words/sellingTexts.ts";
import { type Stretch, stretches } from "./path.ts";

interface PlanSheetProps {
  readonly plan: SellingPlan;
  /** Whether the lowest offers are printed too. */
  readonly shown: boolean;
  readonly title: string;
  /** The find and its state. */
  readonly called: string;
  /** What must be said or done before it is ridden; empty where nothing stands in the way. */
  readonly road: string;
  /** What is invented. */
  readonly note: string;
  /** Address of the chart; null where there is none. */
  readonly picture: string | null;
}

/** More prices than this stand in two columns, above what else there is. */
const LONG = 16;
/** Of more than this the table alone fills the sheet: the chart gives way. */
const TOO_LONG = 40;

/** The price plan on one sheet of A4. */
export function PlanSheet({ plan, shown, title, called, road, note, picture }: PlanSheetProps) {
  const { path, currency, market } = plan;
  const joined = stretches(path);
  return (
    <section class={joined.length > LONG ? "plansheet long" : "plansheet"}>
      <h1>{title}</h1>
      <p>
        <b>{called}</b>
      </p>
      {road !== "" && (
        <p>
          <b>{road}</b>
        </p>
      )}
      <p>{note}</p>
      {picture !== null && joined.length <= TOO_LONG && (
        <>
          <img src={picture} alt="" />
          <p>
            {CHART_WORDS.read}
            {shown && ` ${CHART_WORDS.readLowest}`}
          </p>
        </>
      )}
      <div class="plancolumns">
        <div class="plantable">
          <PlanTable joined={joined} shown={shown} currency={currency} />
        </div>
        <div>
          <h2>{PLAN_COMES_TO}</h2>
          <ul>
            {sellingFacts(plan).map(({ name, figure, more }) => (
              <li key={name}>
                {name}: {figure}, {more}.
              </li>
            ))}
          </ul>
        </div>
        <div>
          <h2>{PLAN_TERMS}</h2>
          <p>{marketWords(market, currency)}</p>
        </div>
      </div>
      <Blank label={PLAN_LISTED_ON} />
    </section>
  );
}

function PlanTable(props: { joined: readonly Stretch[]; shown: boolean; currency: string }) {
  const { joined, shown, currency } = props;
  return (
    <table>
      <thead>
        <tr>
          <th>{PLAN_HEAD_WHEN}</th>
          <th>{PLAN_HEAD_ASK}</th>
          {shown && <th>{PLAN_HEAD_TAKE}</th>}
          <th>{PLAN_HEAD_SOLD}</th>
        </tr>
      </thead>
      <tbody>
        {joined.map((stretch) => (
          <tr key={stretch.from}>
            <td>{capital(weekWords(stretch))}</td>
            <td>{askedMoney(stretch.price, currency)}</td>
            {shown && <td>{lowestWords(stretch, currency)}</td>}
            <td>{fineChance(stretch.sold)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function lowestWords({ lowest: [first, last], price }: Stretch, currency: string): string {
  const told = (lowest: number) => lowestMoney(lowest, price, currency);
  return fromTo(told(first), told(last));
}
