import { holds } from "../bicycle.ts";
import type { Check } from "../inspection/check.ts";
import type { Minutes } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { threePointMoments } from "./moments.ts";
import { isApplicable } from "./task.ts";

/** Minutes at speed 1 to take a bike apart as far as a check needs that is not made from outside: the steps of the quickest work that reveals it. */
export function dismantlingFor(check: Check, { index, attributes }: Bench): Minutes {
  if (check.where !== "dismantled") return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const operation of index.operations.values()) {
    if (!operation.reveals.some((reveal) => reveal.check === check.id)) continue;
    if (!isApplicable(operation, { attributes })) continue;
    const steps = index.closure.get(operation.steps)!.filter(({ onlyIf }) => holds(onlyIf, attributes));
    least = Math.min(
      least,
      steps.reduce((sum, { minutes }) => sum + threePointMoments(minutes).mean, 0),
    );
  }
  return Number.isFinite(least) ? least : 0;
}
