import { useMemo } from "preact/hooks";
import { hasHoursLine } from "../charts/blocks.ts";
import { blocksScene } from "../charts/blocksScene.ts";
import { EIGHT_IN_TEN } from "../words/common.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { goalMoney, money, rate } from "../words/money.ts";
import { likelyRate, rateRange } from "../words/range.ts";
import { bareHours, hours } from "../words/time.ts";
import { isWorth } from "../words/together.ts";
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
    "As wide as its hours, as high as what each of them earns; what stands above your goal is left for you. Best rate first. Filled: chosen; outlined: left. The upright line is where your hours end if they are filled in this order; the set may pass one over that is too long or too dear. Strokes: 8 outcomes in 10. Dashed: hardly looked at yet. Hatched: loses money.",
    ...(budgets.hours !== null && !hasHoursLine(told)
      ? [`Your ${hours(budgets.hours)} reach beyond all of them, so their line is not drawn.`]
      : []),
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
        across: "hours, one find after the other",
        up: "money left for each hour",
        sayX: (value) => hours(value),
        sayY: (value) => rate(value, currency),
        scene,
      }}
      tellings={rows.map(({ shown, chosen }) => [
        `${COURSE_WORDS[shown.course].name}, ${chosen ? "chosen" : "left"}`,
        likelyRate(shown.marginPerHour, currency),
        `${hours(shown.hours.mean)}, ${money(shown.cashNeeded, currency)} cash`,
      ])}
      table={{
        head: [
          "Find",
          "Course",
          "Chosen",
          "An hour",
          EIGHT_IN_TEN,
          "Hours",
          "Hours so far",
          "Cash",
          `Left after ${goalMoney(goal, currency)} an hour`,
        ],
        rows: [
          ...rows.map(({ find, shown, chosen }, i) => [
            find.name,
            COURSE_WORDS[shown.course].name,
            chosen ? "yes" : "no",
            rate(shown.marginPerHour.rate, currency),
            rateRange(shown.marginPerHour.p10, shown.marginPerHour.p90, currency),
            hours(shown.hours.mean),
            `${bareHours(rows.slice(0, i + 1).reduce((sum, row) => sum + row.shown.hours.mean, 0))} h`,
            money(shown.cashNeeded, currency),
            money(shown.netBenefit, currency),
          ]),
          ...(answer.shadowPrices === null || budgets.hours === null
            ? []
            : [["One more hour", isWorth(answer.shadowPrices.hour, currency), "", "", "", "", "", "", ""]]),
        ],
      }}
    />
  );
}
