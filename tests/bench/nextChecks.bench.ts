import { appraise } from "../../worker/engine/decision/appraise.ts";
import { bestCourse } from "../../worker/engine/decision/choice.ts";
import { lookingAt } from "../../worker/engine/decision/looking/looking.ts";
import { lookingOn } from "../../worker/engine/decision/looking/lookingOn.ts";
import { nextChecks } from "../../worker/engine/decision/looking/nextChecks.ts";
import { type OpenFind, weighFind } from "../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../engine/decision/shippedBook.ts";
import { DESCRIPTIONS } from "../engine/inspectors/drawnBike.ts";
import { allRequests } from "../engine/walker/finds.ts";
import type { FloorBench } from "./bench.ts";
import { measure, median } from "./measure.ts";

/** What the advice may add to the median answer, in milliseconds. */
const FLOOR = 3;
/** What a whole answer may take where nothing was looked at, in milliseconds. */
const MOST = 40;
const EFFORT = { rounds: 9, roundMilliseconds: 8 };
/** Answers to every find before any is timed. */
const WARM_UP = 20;

type Request = Parameters<typeof appraise>[0];

function adviceOn(find: OpenFind) {
  const looking = lookingAt(find, bestCourse(find.courses, find.situation));
  return lookingOn(looking, nextChecks(looking, BOOK));
}

/** Milliseconds of whole answers and of the advice in them. */
async function timed(requests: readonly Request[]) {
  const wholes: number[] = [];
  const advice: number[] = [];
  for (const request of requests) {
    const find = weighFind(request, BOOK);
    if (find.stop) continue;
    const [whole, part] = await measure(
      [
        { name: "whole", run: () => appraise(request, BOOK) },
        { name: "advice", run: () => adviceOn(find) },
      ],
      EFFORT,
    );
    wholes.push(whole!.median / 1000);
    advice.push(part!.median / 1000);
  }
  return { wholes, advice };
}

export default {
  title:
    "what to check next, in an answer: the invented finds and the worked cases, and each with nothing looked at",
  run: async (print) => {
    const seen = allRequests().map(([, request]) => request);
    for (let times = 0; times < WARM_UP; times++)
      for (const request of [...seen, ...DESCRIPTIONS]) appraise(request, BOOK);
    let kept = true;
    for (const [name, requests, most] of [
      ["as they stand", seen, FLOOR],
      ["nothing looked at", DESCRIPTIONS, Number.POSITIVE_INFINITY],
    ] as const) {
      const { wholes, advice } = await timed(requests);
      const ratios = wholes.map((whole, at) => whole / (whole - advice[at]!));
      print(
        `${name}: advice ${median(advice).toFixed(3)} ms (${Math.min(...advice).toFixed(3)} to ${Math.max(...advice).toFixed(3)}) of ${median(wholes).toFixed(3)} ms (up to ${Math.max(...wholes).toFixed(3)}); with it x ${median(ratios).toFixed(2)} of without (up to x ${Math.max(...ratios).toFixed(2)})`,
      );
      kept &&= median(advice) <= most && Math.max(...wholes) <= MOST;
    }
    print(`${kept ? "within" : "above"} the floors: ${FLOOR} ms more in the median, ${MOST} ms in all`);
    return kept;
  },
} satisfies FloorBench;
