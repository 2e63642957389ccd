import type { Uncertainty, Way } from "../../service/uncertainty.ts";
import type { ClassSums, SharedResource } from "../classSums.ts";

/**
 * Class sums with one of their uncertainties taken out: expectations and the chance that none ends the frame, exactly; scatter is left as it is.
 */
export function withoutOne(sums: ClassSums, { ways }: Uncertainty): ClassSums {
  const classes = sums.survival.length;
  const survival = sums.survival.slice();
  const money = sums.money.slice();
  const told = sums.told.slice();
  const minutes = sums.minutes.slice();
  const left = new Float64Array(classes).fill(1);
  for (const way of ways) if (way.endsFrame) for (let z = 0; z < classes; z++) left[z]! -= way.chances[z]!;
  for (let z = 0; z < classes; z++) {
    if (left[z]! <= LEAST) continue;
    survival[z] = Math.min(1, survival[z]! / left[z]!);
    for (const way of ways) {
      if (way.endsFrame) continue;
      const share = way.chances[z]! / left[z]!;
      money[z]! -= share * way.money.mean;
      told[z]! -= share * way.told;
      minutes[z]! -= share * way.minutes.mean;
    }
  }
  const shared = sums.shared.map((resource) => unasked(resource, ways, left, money, minutes));
  return { ...sums, survival, money, told, minutes, shared };
}

/** A chance so near to 0 that nothing may be divided by it. */
const LEAST = 1e-9;

/** A shared resource with one asker less: what was taken off the sums because it is paid once, and who asks for it now. */
function unasked(
  resource: SharedResource,
  ways: readonly Way[],
  left: Float64Array,
  money: Float64Array,
  minutes: Float64Array,
): SharedResource {
  if (!ways.some((way) => way.resources.includes(resource.index))) return resource;
  const asked = resource.asked.slice();
  for (let z = 0; z < asked.length; z++) {
    if (left[z]! <= LEAST) continue;
    let chance = 0;
    for (const way of ways)
      if (!way.endsFrame && way.resources.includes(resource.index)) chance += way.chances[z]! / left[z]!;
    const before = asked[z]!;
    if (chance < 1 - LEAST) asked[z] = Math.max(0, 1 - (1 - before) / (1 - chance));
    const back = chance - (before - asked[z]!);
    money[z]! += back * resource.money;
    minutes[z]! += back * resource.minutes;
  }
  return { ...resource, asked };
}
