import { bestCourse } from "../../../worker/engine/decision/choice.ts";
import { begunNow } from "../../../worker/engine/decision/looking/begun.ts";
import { answerOf, type LevelOutlook } from "../../../worker/engine/decision/looking/levelOutlook.ts";
import { lookingAt } from "../../../worker/engine/decision/looking/looking.ts";
import { lookingOn } from "../../../worker/engine/decision/looking/lookingOn.ts";
import { nextChecks } from "../../../worker/engine/decision/looking/nextChecks.ts";
import { type WeighedFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { type DrawnBike, lookedAt } from "./drawnBike.ts";

/** What looking came to on one bike. */
export interface Inspected {
  readonly minutes: number;
  readonly course: string;
  /** Net benefit of the course decided on, with every check known; the minutes of looking apart. */
  readonly worth: number;
}

/** What whoever has looked so far decides, and what that turns out to be worth. */
function decided(bike: DrawnBike, made: readonly string[]): Omit<Inspected, "minutes"> {
  const find = weighFind(lookedAt(bike, made), BOOK);
  const truth = weighFind(lookedAt(bike, bike.levels.keys()), BOOK);
  if (find.stop) return { course: "leave", worth: 0 };
  const { course } = bestCourse(find.courses, find.situation);
  const begun = begunNow(bestCourse(find.courses, find.situation), find.situation);
  const { chosen, kept } = answerOf(outlookOf(truth), begun);
  // Whoever knows may do as if not knowing; a finished frame sold unseen is no gain.
  return { course, worth: Math.min(chosen, kept) };
}

function outlookOf(truth: WeighedFind): LevelOutlook {
  if (truth.stop) throw new Error("papers are in order: nothing stops");
  const { courses, situation } = truth;
  return {
    chance: 1,
    worths: courses.map((one) => (one.open ? one.expected.netBenefit : null)),
    course: bestCourse(courses, situation).course,
    stop: false,
    instead: situation.change.worth,
  };
}

const NOTHING_BEGUN = { course: "leave", lost: null, notRiding: null, ahead: 0 } as const;

/** What knowing everything would bring. */
export function fullKnowledge(bike: DrawnBike): number {
  return answerOf(outlookOf(weighFind(lookedAt(bike, bike.levels.keys()), BOOK)), NOTHING_BEGUN).chosen;
}

const minutesOf = (bike: DrawnBike, made: readonly string[]) =>
  bike.checks.reduce((sum, { id, minutes }) => sum + (made.includes(id) ? minutes : 0), 0);

/** Makes every check in the order of the catalogue. */
export function byCatalogue(bike: DrawnBike): Inspected {
  const made = bike.checks.map(({ id }) => id);
  return { minutes: minutesOf(bike, made), ...decided(bike, made) };
}

/** Makes the quickest checks first, for so many minutes. */
export function cheapestFirst(bike: DrawnBike, minutes: number): Inspected {
  const made: string[] = [];
  for (const { id } of bike.checks.toSorted((a, b) => a.minutes - b.minutes))
    if (minutesOf(bike, [...made, id]) <= minutes) made.push(id);
  return { minutes: minutesOf(bike, made), ...decided(bike, made) };
}

/** Makes the check that the engine names first; once it says enough, all that is owed; and goes on as long as it names any. */
export function byAdvice(bike: DrawnBike): Inspected {
  const made: string[] = [];
  for (let next = advised(bike, made); next.length > 0; next = advised(bike, made)) made.push(...next);
  return { minutes: minutesOf(bike, made), ...decided(bike, made) };
}

/** The check named first; or all that is owed, once the engine says enough. None where nothing is left to look at. */
function advised(bike: DrawnBike, made: readonly string[]): readonly string[] {
  const find = weighFind(lookedAt(bike, made), BOOK);
  if (find.stop) return [];
  const looking = lookingAt(find, bestCourse(find.courses, find.situation));
  const looks = nextChecks(looking, BOOK);
  const open = looks.filter(
    (look) => "check" in look && look.where !== "dismantled" && bike.levels.has(look.check),
  );
  const paying = open.find(({ netGain }) => netGain > 0);
  if (paying && "check" in paying) return [paying.check];
  const { spot, bench } = lookingOn(looking, looks, BOOK);
  const list = [spot, bench].find(({ netGain }) => netGain > 0);
  const next = list?.checks.find((id) => bike.levels.has(id));
  if (next !== undefined) return [next];
  return open.flatMap((look) => (look.owed && "check" in look ? [look.check] : []));
}

/** Means over bikes. */
export interface Inspections {
  /** Net benefit with everything known before. */
  readonly fullKnowledge: number;
  readonly nothing: Mean;
  readonly byCatalogue: Mean;
  /** In as many minutes as the advice takes on the same bike. */
  readonly cheapestFirst: Mean;
  readonly byAdvice: Mean;
}

type Mean = Pick<Inspected, "minutes" | "worth">;

export function inspectAll(bikes: readonly DrawnBike[]): Inspections {
  const advised = bikes.map(byAdvice);
  return {
    fullKnowledge: bikes.reduce((sum, bike) => sum + fullKnowledge(bike), 0) / bikes.length,
    nothing: mean(bikes.map((bike) => cheapestFirst(bike, 0))),
    byCatalogue: mean(bikes.map(byCatalogue)),
    cheapestFirst: mean(bikes.map((bike, at) => cheapestFirst(bike, advised[at]!.minutes))),
    byAdvice: mean(advised),
  };
}

function mean(all: readonly Inspected[]): Mean {
  const of = (name: "minutes" | "worth") => all.reduce((sum, one) => sum + one[name], 0) / all.length;
  return { minutes: of("minutes"), worth: of("worth") };
}
