import { spentWorth } from "../../../../worker/engine/decision/discovery.ts";
import type { Unknown } from "../../../../worker/engine/decision/weighedCourse.ts";
import type { Uncertainty, Way } from "../../../../worker/engine/service/uncertainty.ts";

/** The part of a course's unknown that its worth depends on. */
export type Made = Pick<Unknown, "decided" | "rest" | "sums" | "stakes" | "leaves">;

/** How everything that is not known turns out; null: nothing comes of it. */
type Turn = ReadonlyMap<Uncertainty, Way | null>;

/**
 * Worth of a course by enumeration: every class, every way of every uncertainty, each with its chance, walked down the tree's own leaves.
 * @param given what is known of one uncertainty: the level that it is at; its work is then counted from the start
 * @returns the worth given that level, and the level's chance
 */
export function enumerated(
  { decided, rest, stakes, leaves }: Made,
  given: { readonly one: Uncertainty; readonly rank: number } | null,
): { readonly worth: number; readonly chance: number } {
  let sum = 0;
  let chance = 0;
  for (let z = 0; z < stakes.classes.length; z++)
    for (const { turn, probability } of turns([...decided, ...rest], z)) {
      if (given && (turn.get(given.one)?.rank ?? 0) !== given.rank) continue;
      const weight = stakes.classes[z]! * probability;
      chance += weight;
      sum += weight * walked(turn);
    }
  return { worth: sum / chance, chance };

  function walked(turn: Turn): number {
    const known = given ? (turn.get(given.one) ?? null) : null;
    const index = (one: Uncertainty) =>
      one === given?.one || !turn.get(one) ? -1 : one.ways.indexOf(turn.get(one)!);
    const ways = decided.map(index);
    const { kind, path } = leaves.find((leaf) => leaf.path.ways.every((way, at) => way === ways[at]))!;
    const spent = spentWorth(path, stakes);
    if (kind !== "on") return stakes[kind] - spent;
    const cost = (way: Pick<Way, "money" | "minutes" | "told">) =>
      way.money.mean + way.told + way.minutes.mean * stakes.minuteWorth;
    const showing = rest.flatMap((one) => (one === given?.one ? [] : (turn.get(one) ?? [])));
    if (known?.endsFrame) return stakes.ended - spent - cost(known);
    const ends = showing.find(({ endsFrame }) => endsFrame);
    if (ends) return stakes.ended - spent - cost(ends);
    const all = known ? [...showing, known] : showing;
    return (
      stakes.going -
      cost({ ...path.work, told: path.told }) -
      all.reduce((total, way) => total + cost(way), 0)
    );
  }
}

function turns(all: readonly Uncertainty[], z: number): { turn: Turn; probability: number }[] {
  let made: { turn: Turn; probability: number }[] = [{ turn: new Map(), probability: 1 }];
  for (const one of all) {
    const nothing = 1 - one.ways.reduce((sum, { chances }) => sum + chances[z]!, 0);
    made = made.flatMap(({ turn, probability }) => [
      { turn: new Map([...turn, [one, null]]), probability: probability * nothing },
      ...one.ways.map((way) => ({
        turn: new Map([...turn, [one, way]]),
        probability: probability * way.chances[z]!,
      })),
    ]);
  }
  return made;
}
