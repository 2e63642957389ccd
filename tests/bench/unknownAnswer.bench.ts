import { appraise, reportFind } from "../../worker/engine/decision/appraise.ts";
import { bestCourse } from "../../worker/engine/decision/choice.ts";
import { outcomeOf } from "../../worker/engine/decision/outcome.ts";
import { plannedSales } from "../../worker/engine/decision/plannedSales.ts";
import { trustIn } from "../../worker/engine/decision/trust.ts";
import { type OpenFind, weighFind } from "../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../engine/decision/shippedBook.ts";
import { allRequests } from "../engine/walker/finds.ts";
import type { FloorBench } from "./bench.ts";
import { type Candidate, measure, median } from "./measure.ts";

/** Of the median answer but for what to check next, which has a floor of its own (see nextChecks.bench.ts), in milliseconds. */
const FLOOR = 2;
const GOAL = 0.2;
/** So long that the compiler has settled on each find. */
const EFFORT = { rounds: 9, roundMilliseconds: 40 };

type Request = ReturnType<typeof allRequests>[number][1];

/** Answers to every find before any is timed: the compiler has seen them all by then. */
const WARM_UP = 40;

/** Parts of the answer, each from what it needs worked out before. */
function partsOf(request: Request, find: OpenFind): Candidate[] {
  const { settled, situation, courses } = find;
  const best = bestCourse(courses, situation);
  const open = courses.filter((course) => course.open);
  return [
    { name: "weighing the five courses", run: () => weighFind(request, BOOK) },
    {
      name: "distributions of the open ones",
      run: () => open.map(({ branches }) => outcomeOf(branches, settled.workshop)),
    },
    {
      name: "scenarios, hindsight, sensitivity",
      run: () => trustIn(best, courses, situation),
    },
    {
      name: "sales by their selling plans",
      run: () => plannedSales(situation, courses),
    },
  ];
}

export default {
  title:
    "one answer, without a network: the invented finds and the worked cases, each warm; what to check next apart",
  run: async (print) => {
    const wholes: number[] = [];
    const advised: number[] = [];
    const shares = new Map<string, number[]>();
    let slowest = { id: "", milliseconds: 0 };
    let stops = 0;
    for (let times = 0; times < WARM_UP; times++)
      for (const [, request] of allRequests()) appraise(request, BOOK);
    for (const [id, request] of allRequests()) {
      const find = weighFind(request, BOOK);
      if (find.stop) {
        stops += 1;
        continue;
      }
      const candidates = [
        { name: "the answer", run: () => reportFind(weighFind(request, BOOK), BOOK, []) },
        { name: "with what to check next", run: () => appraise(request, BOOK) },
        ...partsOf(request, find),
      ];
      const [whole, withAdvice, ...parts] = await measure(candidates, EFFORT);
      advised.push(withAdvice!.median / 1000);
      const milliseconds = whole!.median / 1000;
      wholes.push(milliseconds);
      if (milliseconds > slowest.milliseconds) slowest = { id, milliseconds };
      let rest = 1;
      for (const { name, median: part } of parts) {
        const share = part / whole!.median;
        rest -= share;
        shares.set(name, [...(shares.get(name) ?? []), share]);
      }
      shares.set("all else", [...(shares.get("all else") ?? []), rest]);
    }
    const middle = median(wholes);
    print(
      `${wholes.length} finds (${stops} more are stopped before money is counted and left out): median ${middle.toFixed(3)} ms, ${Math.min(...wholes).toFixed(3)} to ${slowest.milliseconds.toFixed(3)} ms (${slowest.id})`,
    );
    print(
      `${verdict(middle, FLOOR)} the floor of ${FLOOR} ms, ${verdict(middle, GOAL)} the goal of ${GOAL} ms`,
    );
    print(
      `with what to check next: median ${median(advised).toFixed(3)} ms, up to ${Math.max(...advised).toFixed(3)}`,
    );
    print("parts measured beside it, as ratios to the whole, median over the finds (least to most)");
    for (const [name, all] of shares)
      print(
        `  ${name.padEnd(34)} x ${median(all).toFixed(2)}  (${Math.min(...all).toFixed(2)} to ${Math.max(...all).toFixed(2)})`,
      );
    return middle <= FLOOR;
  },
} satisfies FloorBench;

function verdict(milliseconds: number, most: number): string {
  return milliseconds <= most ? "within" : "above";
}
