import { useMemo } from "preact/hooks";
import { spreadScene } from "../charts/spreadScene.ts";
import { EIGHT_IN_TEN } from "../words/common.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money, rate } from "../words/money.ts";
import { between, moneyRange } from "../words/range.ts";
import { hours } from "../words/time.ts";
import { hoursTitle } from "../words/togetherTitles.ts";
import { calledAmong } from "./called.ts";
import { hoursSpread } from "./charts.ts";
import { PlanePanel } from "./PlanePanel.tsx";
import type { Standing } from "./standing.ts";

/** Money left against hours: the steeper from the corner, the more an hour earns. */
export function HoursPanel({ stood, dimmed }: { stood: Standing; dimmed: boolean }) {
  const { rows, answer } = stood;
  const { currency } = answer;
  const told = useMemo(() => hoursSpread(stood), [stood]);
  const scene = useMemo(() => spreadScene.bind(null, told), [told]);
  const title = hoursTitle(
    rows.map(({ find, chosen, shown }) => ({
      called: calledAmong(find),
      chosen,
      rate: shown.marginPerHour.rate,
      margin: shown.margin.mean,
    })),
  );
  const others = told.points.some((point) => point.others.length > 0)
    ? " Small and pale: its other courses."
    : "";
  return (
    <PlanePanel
      id="money-against-hours"
      title={title}
      lines={[
        `All along a slanting line an hour earns the same. Filled: chosen. Strokes: 8 outcomes in 10.${others} Grey ground: loses money.`,
      ]}
      dimmed={dimmed}
      rows={rows}
      spec={{
        label: `${title}. Money left against hours.`,
        across: "hours",
        up: "money left",
        sayX: (value) => hours(value),
        sayY: (value) => money(value, currency),
        scene,
      }}
      tellings={rows.map(({ shown, chosen }) => [
        `${COURSE_WORDS[shown.course].name}, ${chosen ? "chosen" : "left"}`,
        `${money(shown.margin.mean, currency)} left, 8 in 10: ${moneyRange(shown.margin.p10, shown.margin.p90, currency)}`,
        `${hours(shown.hours.mean)}, 8 in 10: ${between(hours(shown.hours.p10), hours(shown.hours.p90))}`,
        `${rate(shown.marginPerHour.rate, currency)} an hour`,
      ])}
      table={{
        head: [
          "Find",
          "Course",
          "Chosen",
          "Money left",
          EIGHT_IN_TEN,
          "Hours",
          "8 in 10 between (hours)",
          "An hour",
        ],
        rows: rows.map(({ find, shown, chosen }) => [
          find.name,
          COURSE_WORDS[shown.course].name,
          chosen ? "yes" : "no",
          money(shown.margin.mean, currency),
          moneyRange(shown.margin.p10, shown.margin.p90, currency),
          hours(shown.hours.mean),
          between(hours(shown.hours.p10), hours(shown.hours.p90)),
          rate(shown.marginPerHour.rate, currency),
        ]),
      }}
    />
  );
}
