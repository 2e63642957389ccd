import type { Situation } from "../../../worker/engine/decision/situation.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import type { Ledger } from "../../../worker/engine/service/ledger.ts";
import type { CourseId } from "../../../worker/engine/service/operation.ts";
import type { Place } from "../../../worker/engine/service/task.ts";
import type { Uncertainty } from "../../../worker/engine/service/uncertainty.ts";

/** A job to do, and which list of the table follows where it fails. */
export interface Ordered {
  readonly operation: string;
  readonly place: Place;
  readonly way: number;
}

/** What is done about one level of a check that nobody looked at. */
export type Response =
  | { readonly kind: "condemned" }
  | { readonly kind: "told" }
  | { readonly kind: "cured"; readonly by: readonly Ordered[] }
  | { readonly kind: "spared"; readonly tasks: readonly string[] };

/** Something that is decided on as it shows. Its outcomes are numbered as the changes of course count them. */
export interface Decision {
  readonly of: string;
  /** Place of a job that may fail; null for a check. */
  readonly job: Place | null;
  /** For a check: number of the outcome where the level stands, by rank. For a job: where it failed and the work goes on, at rank 0. */
  readonly outcome: ReadonlyMap<number, number>;
}

/** What the engine decided for a course: which work, and what on which finding. No amounts, no chances. */
export interface Playbook {
  readonly course: CourseId;
  /** In working order. */
  readonly plan: readonly Ordered[];
  readonly polished: boolean;
  readonly repainted: boolean;
  /** Faults that the plan takes away: check and position. */
  readonly cured: ReadonlySet<string>;
  /** By check, then by rank; a level without an entry changes nothing. */
  readonly responses: ReadonlyMap<string, ReadonlyMap<number, Response>>;
  readonly decisions: readonly Decision[];
  /** After these outcomes of the first decisions, as `pathCode` writes them, the course is changed. */
  readonly changedAfter: ReadonlySet<number>;
  readonly change: CourseId;
  readonly salvage: CourseId;
  /** Minutes at speed 1 after which an operation with an open end is given up. */
  readonly limits: ReadonlyMap<string, number>;
  /** Jobs of the courses that are changed to. */
  readonly others: ReadonlyMap<CourseId, readonly Ordered[]>;
  readonly listed: readonly string[];
  readonly listedWithoutFrame: readonly string[];
}

const OUTCOMES = 16;
export const NO_PATH = 1;

/** Outcomes as one number: the path so far and the next outcome, -1 where nothing came of it. */
export function pathCode(path: number, outcome: number): number {
  return path * OUTCOMES + outcome + 1;
}

export function playbookOf(course: OpenCourse, situation: Situation): Playbook {
  const { plan, unknown } = course;
  const { ledger, fixedPlans, parts, salvage } = situation;
  const place = new Map(plan.tasks.map(({ operation }, index) => [operation.id, index]));
  const ordered = orderedIn([...plan.resources], ledger);
  const changed = unknown?.leaves.filter(({ kind }) => kind === "changed") ?? [];
  const names = (list: typeof parts.list) =>
    list.pieces.filter(({ listed }) => listed).map(({ piece }) => piece);
  return {
    course: course.course,
    plan: ordered.sort((a, b) => place.get(a.operation)! - place.get(b.operation)!),
    polished: plan.polishes,
    repainted: plan.repaints,
    cured: new Set(plan.cured.map(({ check, position }) => `${check.id} ${position}`)),
    responses: responsesOf(course, ledger),
    decisions: decisionsOf(unknown?.decided ?? [], course, ledger),
    changedAfter: new Set(changed.map(({ path }) => path.ways.reduce(pathCode, NO_PATH))),
    change: changeOf(unknown?.change.sale),
    salvage: salvage.sale === null ? "leave" : "break-for-parts",
    limits: new Map(
      ledger.resources.flatMap(({ task }) =>
        task?.openEnd ? [[task.operation.id, task.openEnd.limit] as const] : [],
      ),
    ),
    others: new Map(
      Object.entries(fixedPlans).map(([id, { resources }]) => [
        id as CourseId,
        orderedIn([...resources], ledger),
      ]),
    ),
    listed: names(parts.list),
    listedWithoutFrame: names(parts.withoutFrame),
  };
}

/** Selling told has a price alone; breaking has pieces that sell or do not. */
function changeOf(sale: NonNullable<OpenCourse["unknown"]>["change"]["sale"] | undefined): CourseId {
  if (!sale) return "leave";
  return sale.lots ? "break-for-parts" : "sell-as-found";
}

function orderedIn(resources: readonly number[], ledger: Ledger): Ordered[] {
  return resources.flatMap((index) => {
    const { task } = ledger.resources[index]!;
    if (task === null) return [];
    const { resources: own, taskInstead } = ledger.forOperation(task.operation, task.place);
    const way = [own[0]!, ...taskInstead].indexOf(index);
    return [{ operation: task.operation.id, place: task.place, way }];
  });
}

function responsesOf({ unknown, plan }: OpenCourse, ledger: Ledger): Playbook["responses"] {
  const all = [...(unknown?.decided ?? []), ...(unknown?.rest ?? [])].filter(({ job }) => job === null);
  return new Map(
    all.map(({ of, ways }) => {
      const spared = plan.tasks
        .filter(({ because }) => because.length === 1 && because[0]!.assumed && because[0]!.check.id === of)
        .map(({ operation }) => operation.id);
      const byRank = new Map<number, Response>();
      for (const { rank, endsFrame, told, resources, money, minutes } of ways) {
        // The first way of a level is its cure as it is meant to go; how it may fail is the walker's own business.
        if (byRank.get(rank!)?.kind === "cured") continue;
        if (resources.length > 0) byRank.set(rank!, { kind: "cured", by: orderedIn(resources, ledger) });
        else if (told > 0) byRank.set(rank!, { kind: "told" });
        else if (money.mean < 0 || minutes.mean < 0) byRank.set(rank!, { kind: "spared", tasks: spared });
        else if (endsFrame && !byRank.has(rank!)) byRank.set(rank!, { kind: "condemned" });
      }
      return [of, byRank];
    }),
  );
}

/** An operation at both wheels is two uncertainties, in the order of the plan's resources. */
function decisionsOf(
  decided: readonly Uncertainty[],
  { plan, unknown }: OpenCourse,
  ledger: Ledger,
): Decision[] {
  const all = [...decided, ...(unknown?.rest ?? [])];
  const jobs = new Map<Uncertainty, Place>();
  for (const id of new Set(all.flatMap(({ of, job }) => (job ? [of] : [])))) {
    const places = orderedIn([...plan.resources], ledger).filter(({ operation }) => operation === id);
    // Those of one operation keep their order wherever they stand, for all are alike.
    all
      .filter(({ of, job }) => job && of === id)
      .forEach((one, index) => {
        jobs.set(one, places[index]!.place);
      });
  }
  return decided.map((one) => ({
    of: one.of,
    job: jobs.get(one) ?? null,
    outcome: new Map(
      one.ways.flatMap(({ rank, endsFrame }, index) => (endsFrame ? [] : [[rank ?? 0, index]])),
    ),
  }));
}
