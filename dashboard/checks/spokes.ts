import type { Check } from "../api/types.ts";

/** One of the wheel's twelve groups: how far it was looked at. `absent` where none of its checks applies. */
export interface Spoke {
  readonly name: string;
  readonly made: number;
  readonly applicable: number;
  readonly looked: "fully" | "partly" | "not" | "absent";
}

/**
 * The spokes of the wheel in the catalogue's order. They show looking, never quality.
 * @param all every check of the catalogue
 * @param applies those that apply to this bike
 * @param isMade whether a check was made
 */
export function spokes(
  all: readonly Check[],
  applies: readonly Check[],
  isMade: (check: string) => boolean,
): readonly Spoke[] {
  const names = [...new Set(all.map(({ spoke }) => spoke))];
  return names.map((name) => {
    const checks = applies.filter(({ spoke }) => spoke === name);
    const made = checks.filter(({ id }) => isMade(id)).length;
    return { name, made, applicable: checks.length, looked: extent(made, checks.length) };
  });
}

function extent(made: number, of: number): Spoke["looked"] {
  if (of === 0) return "absent";
  if (made === 0) return "not";
  return made === of ? "fully" : "partly";
}
