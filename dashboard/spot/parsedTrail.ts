import { isRecord, parsedAnswers } from "../answers/parsed.ts";
import type { AttributeName, Observation } from "../api/types.ts";
import type { LookedHow, Step } from "./trail.ts";

const HOWS: readonly string[] = ["seen", "cannot-tell", "later"] satisfies LookedHow[];
const POSITIONS: readonly unknown[] = ["front", "rear", null];

/** Trails by find, from what was kept in the browser: whatever has the right shape is taken, the rest left out. */
export function parsedTrails(kept: unknown): Readonly<Record<string, readonly Step[]>> {
  if (!isRecord(kept) || !isRecord(kept.trails)) return {};
  return Object.fromEntries(
    Object.entries(kept.trails).map(([id, steps]) => [id, Array.isArray(steps) ? steps.flatMap(stepIn) : []]),
  );
}

function stepIn(value: unknown): Step[] {
  if (!isRecord(value)) return [];
  if (value.kind === "pick") {
    if (typeof value.name !== "string" || typeof value.set !== "string") return [];
    const before = typeof value.before === "string" ? { before: value.before } : {};
    return [{ kind: "pick", name: value.name as AttributeName, set: value.set, ...before }];
  }
  if (value.kind === "price") {
    return [{ kind: "price", ...numbersIn(value, ["before", "set"]) }];
  }
  if (value.kind !== "look" || typeof value.check !== "string" || !POSITIONS.includes(value.position))
    return [];
  if (typeof value.how !== "string" || !HOWS.includes(value.how)) return [];
  return [
    {
      kind: "look",
      check: value.check,
      position: value.position as "front" | "rear" | null,
      how: value.how as LookedHow,
      ...observationIn(value, "before"),
      ...observationIn(value, "set"),
      ...numbersIn(value, ["offerBefore", "offerAfter"]),
    },
  ];
}

function numbersIn<K extends string>(
  from: Record<string, unknown>,
  keys: readonly K[],
): { [k in K]?: number } {
  const held = keys.filter((key) => Number.isFinite(from[key])).map((key) => [key, from[key]]);
  return Object.fromEntries(held) as { [k in K]?: number };
}

/** Read as the find's own answers are. */
function observationIn<K extends "before" | "set">(
  from: Record<string, unknown>,
  key: K,
): { [k in K]?: Observation } {
  const read = parsedAnswers({ observations: { it: from[key] } }).observations.it;
  return (read === undefined ? {} : { [key]: read }) as { [k in K]?: Observation };
}
