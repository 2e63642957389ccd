import type { Reference } from "../api/types.ts";
import { applicable, settled } from "../checks/applies.ts";
import { isMade } from "../checks/made.ts";
import { spokes } from "../checks/spokes.ts";
import { Wheel } from "../signs/Wheel.tsx";
import type { Find } from "./find.ts";

/** The wheel of a find: which groups of checks were looked at. */
export function FindWheel({ find, reference, size }: { find: Find; reference: Reference; size?: number }) {
  const attributes = settled(find.body.find, reference.attributeDefaults);
  const made = find.body.observations ?? {};
  const wheel = spokes(reference.checks, applicable(reference.checks, attributes), (id) => isMade(made[id]));
  return size === undefined ? <Wheel spokes={wheel} /> : <Wheel spokes={wheel} size={size} />;
}
