import type { Money } from "../quantity.ts";
import { type Moments, NOTHING, sum } from "../service/moments.ts";
import type { Resource } from "../service/resource.ts";
import { goingOn, type Uncertainty, usedWork, type Way } from "../service/uncertainty.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { ClassSums } from "./classSums.ts";
import type { Work } from "./courseBranch.ts";

/** What a course stands to gain and lose as its uncertainties show. */
export interface DiscoveryStakes {
  /** Chance of each class of history. */
  readonly classes: Float64Array;
  /** Expected takings less the shown plan, at the goal, where nothing unseen comes of it. */
  readonly going: Money;
  /** Net benefit of what is done instead where the course is changed, the opening work paid. */
  readonly changed: Money;
  /** Net benefit where the frame is finished and the best is made of what is left, the opening work paid. */
  readonly ended: Money;
  /** The same where nothing is made of it: the bike is recycled. */
  readonly abandoned: Money;
  /** Resources that the opening work takes beside its jobs, not counted in it. */
  readonly opened: ReadonlySet<number>;
  /** Worth of a minute at speed 1. */
  readonly minuteWorth: Money;
  readonly resources: readonly Resource[];
}

/** What was found and done on the way to some state of the work. */
export interface Path {
  /** The way of each decided uncertainty that has shown, by index; -1 where nothing came of it. */
  readonly ways: readonly number[];
  /** Work that the decided ways bring beyond the plan. */
  readonly work: Work;
  readonly told: Money;
  /** Resources that they use. */
  readonly used: ReadonlySet<number>;
  /** Spent so far beside the opening work, where the course is changed now. */
  readonly spent: Work;
  /** Steps taken so far, and what jobs took beside themselves, by resource. */
  readonly opened: ReadonlySet<number>;
}

/** A place where the work stands: going on to the end, changed, or the frame ended. */
export interface Leaf {
  readonly kind: "on" | "changed" | "ended";
  /** Chance of it and of each class together. */
  readonly mass: Float64Array;
  readonly path: Path;
}

export interface Unfolding {
  readonly worth: Money;
  /** Worth without the right to change course: whatever shows is cured, and a finished frame is recycled. */
  readonly bound: Money;
  readonly leaves: readonly Leaf[];
}

/** An unfolding that is still added to. */
interface Growing {
  worth: Money;
  bound: Money;
  leaves: Leaf[];
}

const START: Omit<Path, "opened"> = {
  ways: [],
  work: { money: NOTHING, minutes: NOTHING },
  told: 0,
  used: new Set(),
  spent: { money: NOTHING, minutes: NOTHING },
};

/**
 * Plays the decided uncertainties in the order in which they show. After each that brings work the course may be changed: it is, where what is left of it,
 * with the money and the hours already spent sunk and what was found telling of what was not, is worth less than what else can be done (backward
 * induction over the tree of what may show; exact). What is not decided on is carried in expectation, by class.
 * @param decided few, as the tree has the product of their ways
 * @param rest what all other uncertainties bring
 */
export function unfold(decided: readonly Uncertainty[], rest: ClassSums, stakes: DiscoveryStakes): Unfolding {
  return goOn(0, stakes.classes, { ...START, opened: stakes.opened }, decided, rest, stakes);
}

function goOn(
  place: number,
  mass: Float64Array,
  path: Path,
  decided: readonly Uncertainty[],
  rest: ClassSums,
  stakes: DiscoveryStakes,
): Growing {
  const next = decided[place];
  if (!next) return standing(mass, path, rest, stakes);
  const shown = showing(path, next, stakes.resources);
  const nothing = mass.slice();
  const sum: Growing = { worth: 0, bound: 0, leaves: [] };
  for (let index = 0; index < next.ways.length; index++) {
    const way = next.ways[index]!;
    const here = among(mass, way);
    for (let z = 0; z < here.length; z++) nothing[z] = Math.max(0, nothing[z]! - here[z]!);
    if (way.endsFrame) {
      add(sum, endedBy(here, shown, way, index, stakes));
      continue;
    }
    const taken = taking(shown, next, way, index, stakes);
    const on = goOn(place + 1, here, taken, decided, rest, stakes);
    const brings = worthOf(way.money, way.minutes, stakes) > 0;
    const risk = endOf(next, index);
    if (risk === null) {
      add(sum, brings ? orChanged(on, [{ mass: here, path: taken }], stakes) : on);
      continue;
    }
    // What the cure does to the frame is not known while it may still be left.
    const lost = among(mass, risk);
    for (let z = 0; z < lost.length; z++) nothing[z] = Math.max(0, nothing[z]! - lost[z]!);
    index++;
    add(on, endedBy(lost, shown, risk, index, stakes));
    const left = { mass: lost, path: { ...taken, ways: [...shown.ways, index] } };
    add(sum, brings ? orChanged(on, [{ mass: here, path: taken }, left], stakes) : on);
  }
  const untouched = { ...withMinutes(shown, next.otherwise), ways: [...shown.ways, -1] };
  add(sum, goOn(place + 1, nothing, untouched, decided, rest, stakes));
  return sum;
}

/** The end of the frame by the very work that cures what shows: a way of the same level. */
function endOf({ job, ways }: Uncertainty, index: number): Way | null {
  const next = ways[index + 1];
  return job === null && next?.endsFrame && next.rank === ways[index]!.rank ? next : null;
}

/** Chance of a way and of each class together. */
export function among(mass: Float64Array, { chances }: Way): Float64Array {
  const together = new Float64Array(mass.length);
  for (let z = 0; z < mass.length; z++) together[z] = mass[z]! * chances[z]!;
  return together;
}

function endedBy(mass: Float64Array, shown: Path, way: Way, index: number, stakes: DiscoveryStakes): Growing {
  const path = ending(shown, way, index);
  const chance = total(mass);
  const spent = spentWorth(path, stakes);
  return {
    worth: chance * (stakes.ended - spent),
    bound: chance * (stakes.abandoned - spent),
    leaves: [{ kind: "ended", mass, path }],
  };
}

/** Going on, or changing the course where that is worth more. */
function orChanged(on: Growing, here: readonly Omit<Leaf, "kind">[], stakes: DiscoveryStakes): Growing {
  let instead = 0;
  for (const { mass, path } of here) instead += total(mass) * (stakes.changed - spentWorth(path, stakes));
  if (instead <= on.worth) return on;
  const leaves = here.map((leaf): Leaf => ({ ...leaf, kind: "changed" }));
  return { worth: instead, bound: on.bound, leaves };
}

function add(sum: Growing, { worth, bound, leaves }: Unfolding): void {
  sum.worth += worth;
  sum.bound += bound;
  for (const leaf of leaves) sum.leaves.push(leaf);
}

/** The plan carried through, the rest of the unseen and its chance to end the frame counted in expectation. */
function standing(mass: Float64Array, path: Path, rest: ClassSums, stakes: DiscoveryStakes): Growing {
  const here = stakes.going - path.told - worthOf(path.work.money, path.work.minutes, stakes);
  const spent = spentWorth(path, stakes);
  let worth = 0;
  let bound = 0;
  for (let z = 0; z < mass.length; z++) {
    const { money, minutes } = restOf(rest, path, z);
    const on = rest.survival[z]! * (here - money - rest.told[z]! - minutes * stakes.minuteWorth);
    const wasted = spent + rest.endMoney[z]! + rest.endMinutes[z]! * stakes.minuteWorth;
    const lost = 1 - rest.survival[z]!;
    worth += mass[z]! * (on + lost * (stakes.ended - wasted));
    bound += mass[z]! * (on + lost * (stakes.abandoned - wasted));
  }
  return { worth, bound, leaves: [{ kind: "on", mass, path }] };
}

/** Expected work of what was not decided on in one class; what the path already uses is not paid for again. */
export function restOf(rest: ClassSums, { used }: Path, z: number): { money: number; minutes: number } {
  let money = rest.money[z]!;
  let minutes = rest.minutes[z]!;
  if (used.size > 0) {
    for (const shared of rest.shared) {
      if (!used.has(shared.index)) continue;
      money -= shared.asked[z]! * shared.money;
      minutes -= shared.asked[z]! * shared.minutes;
    }
  }
  return { money, minutes };
}

/** The path once an uncertainty has shown: taken apart that far, its job done. */
function showing(path: Path, { opening, job, resource }: Uncertainty, resources: readonly Resource[]): Path {
  const opened = opening.length === 0 ? path.opened : new Set([...path.opened, ...opening]);
  if (job === null || isOpening(job)) return { ...path, opened };
  return { ...path, opened, spent: joined(path.spent, resources[resource!]!) };
}

/** The path with a way's work ahead; a failed job's follow-up is done at once, a fault's cure only once the parts are there. */
function taking(
  path: Path,
  { job }: Uncertainty,
  way: Way,
  index: number,
  { resources }: DiscoveryStakes,
): Path {
  const own = beside(path, way, (resource) => goingOn(resources[resource]!));
  return {
    ...withOwn(path, way, own),
    ways: [...path.ways, index],
    spent: joined(path.spent, job === null ? way.early : own),
    opened: taken(path, way),
  };
}

/** The path with a way's work ahead; what it uses already is not paid for again. */
export function withWork(path: Path, way: Way, resources: readonly Resource[]): Path {
  return withOwn(
    path,
    way,
    beside(path, way, (resource) => resources[resource]!),
  );
}

function withOwn(path: Path, { told, resources }: Way, own: Work): Path {
  return {
    ...path,
    work: joined(path.work, own),
    told: path.told + told,
    used: resources.length === 0 ? path.used : new Set([...path.used, ...resources]),
  };
}

/** A way's work beside what the path uses already. */
function beside({ used }: Path, way: Way, costOf: (resource: number) => Work): Work {
  let { money, minutes } = way;
  for (const resource of way.resources) {
    if (!used.has(resource)) continue;
    const paid = costOf(resource);
    money = less(money, paid.money);
    minutes = less(minutes, paid.minutes);
  }
  return { money, minutes };
}

/** The path with a job that took more or less time than the plan counts. */
function withMinutes(path: Path, minutes: Moments | undefined): Path {
  if (minutes === undefined) return path;
  const own: Work = { money: NOTHING, minutes };
  return { ...path, work: joined(path.work, own), spent: joined(path.spent, own) };
}

function ending(path: Path, way: Way, index: number): Path {
  return {
    ...path,
    ways: [...path.ways, index],
    spent: joined(path.spent, way),
    opened: taken(path, way),
  };
}

/** What of the plan is used once a way has taken its part. */
function taken({ opened }: Path, { takes }: Way): ReadonlySet<number> {
  return takes.length === 0 ? opened : new Set([...opened, ...takes]);
}

function joined(a: Work, b: Work): Work {
  return { money: sum(a.money, b.money), minutes: sum(a.minutes, b.minutes) };
}

function less(whole: Moments, part: Moments): Moments {
  return { mean: whole.mean - part.mean, variance: Math.max(0, whole.variance - part.variance) };
}

/** What was spent on a path beside the opening work, hours at the goal: lost where the course is changed. */
export function spentWorth({ spent, opened }: Path, stakes: DiscoveryStakes): Money {
  const { money, minutes } = usedWork(opened, stakes.resources);
  return worthOf(spent.money, spent.minutes, stakes) + money + minutes * stakes.minuteWorth;
}

/** Money with minutes at the goal. */
export function worthOf(money: Moments, minutes: Moments, { minuteWorth }: DiscoveryStakes): Money {
  return money.mean + minutes.mean * minuteWorth;
}

function total(mass: Float64Array): number {
  let sum = 0;
  for (const chance of mass) sum += chance;
  return sum;
}
