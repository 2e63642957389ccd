import { NOTHING, threePointMoments } from "./moments.ts";
import type { Step } from "./operation.ts";
import type { Resource } from "./resource.ts";

/** A resource that costs nothing, for others to differ from. */
export const PLAIN: Resource = {
  kind: "task",
  money: NOTHING,
  minutes: NOTHING,
  failure: null,
  contingency: { money: NOTHING, minutes: NOTHING },
  endsFrame: 0,
  endsTitle: 0,
  task: null,
  step: null,
  tool: null,
};

/** A dismantling step: the same on every bike. */
export function stepResource(step: Step): Resource {
  return { ...PLAIN, kind: "step", minutes: threePointMoments(step.minutes), step };
}
