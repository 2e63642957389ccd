import { useMemo } from "preact/hooks";
import { spreadScene } from "../charts/spreadScene.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money, rate } from "../words/money.ts";
import { between, moneyRange } from "../words/range.ts";
import { hours } from "../words/time.ts";
import {
  courseChosen,
  HOURS_ACROSS,
  HOURS_HEAD,
  HOURS_UP,
  hoursKey,
  hoursLines,
  hoursSentence,
  yesOrNo,
} from "../words/togetherPlanes.ts";
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
  const others = told.points.some((point) => point.others.length > 0);
  return (
    <PlanePanel
      id="money-against-hours"
      title={title}
      lines={[hoursKey(others)]}
      dimmed={dimmed}
      rows={rows}
      spec={{
        label: hoursSentence(title),
        across: HOURS_ACROSS,
        up: HOURS_UP,
        sayX: (value) => hours(value),
        sayY: (value) => money(value, currency),
        scene,
      }}
      tellings={rows.map(({ shown, chosen }) => [
        courseChosen(shown.course, chosen),
        ...hoursLines(shown, currency),
      ])}
      table={{
        head: HOURS_HEAD,
        rows: rows.map(({ find, shown, chosen }) => [
          find.name,
          COURSE_WORDS[shown.course].name,
          yesOrNo(chosen),
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
