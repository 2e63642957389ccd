import type { Hours, Money, MoneyPerHour } from "../quantity.ts";

export interface Point {
  readonly hours: Hours;
  readonly margin: Money;
}

/**
 * What each longer course adds for each added hour. On the upper concave envelope of margin against hours, sorted by hours, from the
 * shortest course to the one with the largest margin, each course's slope over the one before it; null off the envelope and for its
 * first point. Going on is worth while as long as the slope is at least the hourly goal, which is the same choice as the highest
 * margin - goal x hours (Andrew 1979, monotone chain).
 */
export function addedMarginPerAddedHour(points: readonly (Point | null)[]): (MoneyPerHour | null)[] {
  const order = points
    .flatMap((point, index) => (point ? [{ ...point, index }] : []))
    .sort((a, b) => a.hours - b.hours || b.margin - a.margin || a.index - b.index);
  const hull: typeof order = [];
  for (const point of order) {
    const last = hull.at(-1);
    if (last && point.margin <= last.margin) continue;
    if (last && point.hours === last.hours) continue;
    while (hull.length > 1 && slope(hull.at(-2)!, hull.at(-1)!) <= slope(hull.at(-1)!, point)) hull.pop();
    hull.push(point);
  }
  const added = points.map((): MoneyPerHour | null => null);
  hull.forEach((point, place) => {
    if (place > 0) added[point.index] = slope(hull[place - 1]!, point);
  });
  return added;
}

function slope(from: Point, to: Point): MoneyPerHour {
  return (to.margin - from.margin) / (to.hours - from.hours);
}
