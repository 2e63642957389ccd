import { useMemo } from "preact/hooks";
import { hasHoursLine } from "../charts/blocks.ts";
import { blocksScene } from "../charts/blocksScene.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money, rate } from "../words/money.ts";
import { likelyRate, rateRange } from "../words/range.ts";
import { bareHours, hours } from "../words/time.ts";
import { isWorth } from "../words/together.ts";
import {
  courseChosen,
  MERIT_ACROSS,
  MERIT_KEY,
  MERIT_ONE_MORE,
  MERIT_UP,
  meritHead,
  noHoursLine,
  takesUp,
  yesOrNo,
} from "../words/togetherPlanes.ts";
import { meritSentence, meritTitle } from "../words/togetherTitles.ts";
import { calledAmong } from "./called.ts";
import { meritBlocks } from "./charts.ts";
import { PlanePanel } from "./PlanePanel.tsx";
import type { Standing } from "./standing.ts";

/** The merit order: hours across, money for each of them up. */
export function MeritPanel({ stood, dimmed }: { stood: Standing; dimmed: boolean }) {
  const { rows, answer, goal } = stood;
  const { currency, budgets, nextIn } = answer;
  const told = useMemo(() => meritBlocks(stood), [stood]);
  const scene = useMemo(() => blocksScene.bind(null, told), [told]);
  const next = rows.find(({ find }) => find.id === nextIn?.id);
  const title = meritTitle({
    chosen: rows.filter(({ chosen }) => chosen).length,
    of: rows.length,
    hours: budgets.hours,
    nextIn:
      nextIn === null || next === undefined
        ? null
        : { called: calledAmong(next.find), needsHours: nextIn.needs.hours > 0 },
    overrun: answer.overruns.length > 0,
  });
  const lines = [
    MERIT_KEY,
    ...(budgets.hours !== null && !hasHoursLine(told) ? [noHoursLine(budgets.hours)] : []),
  ];
  const named = rows.map(({ find, shown }) => ({ name: find.name, perHour: shown.marginPerHour }));
  return (
    <PlanePanel
      id="merit-order"
      title={title}
      lines={lines}
      dimmed={dimmed}
      rows={rows}
      spec={{
        label: meritSentence(title, named, goal, currency),
        across: MERIT_ACROSS,
        up: MERIT_UP,
        sayX: (value) => hours(value),
        sayY: (value) => rate(value, currency),
        scene,
      }}
      tellings={rows.map(({ shown, chosen }) => [
        courseChosen(shown.course, chosen),
        likelyRate(shown.marginPerHour, currency),
        takesUp(shown.hours.mean, shown.cashNeeded, currency),
      ])}
      table={{
        head: meritHead(goal, currency),
        rows: [
          ...rows.map(({ find, shown, chosen }, i) => [
            find.name,
            COURSE_WORDS[shown.course].name,
            yesOrNo(chosen),
            rate(shown.marginPerHour.rate, currency),
            rateRange(shown.marginPerHour.p10, shown.marginPerHour.p90, currency),
            hours(shown.hours.mean),
            `${bareHours(rows.slice(0, i + 1).reduce((sum, row) => sum + row.shown.hours.mean, 0))} h`,
            money(shown.cashNeeded, currency),
            money(shown.netBenefit, currency),
          ]),
          ...(answer.shadowPrices === null || budgets.hours === null
            ? []
            : [[MERIT_ONE_MORE, isWorth(answer.shadowPrices.hour, currency), "", "", "", "", "", "", ""]]),
        ],
      }}
    />
  );
}
