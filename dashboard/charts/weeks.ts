import type { Box, Measure, Plane, PlaneText, Point, Size } from "./plane.ts";
import { NARROW, pixelX, pixelY } from "./plane.ts";
import { scaleOver } from "./scale.ts";

/** One week of a price plan; money in one currency. */
export interface WeekMark {
  /** From 1. */
  readonly week: number;
  /** Asked in that week. */
  readonly price: number;
  /** Chance that it has sold by the end of that week, 0 to 1. */
  readonly sold: number;
  /** Lowest offer to take in that week; null while it is not shown. */
  readonly lowest: number | null;
}

export interface WeeksTold {
  /** In order, from week 1, without a gap. */
  readonly weeks: readonly WeekMark[];
  /** A price as it stands beside the line. */
  readonly sayPrice: (price: number) => string;
  /** What the two lines mean. */
  readonly ask: string;
  readonly take: string;
  /** The last week's chance, beside its blocks. */
  readonly soldWords: string;
}

/** Ten blocks a week, in pixels: one is 1 in 10. */
export const BLOCKS = 10;
export const BLOCK = 4;
export const STEP = 5.5;
/** Pixels at the foot of the plot kept for the blocks, a gap above them included. */
export const LANE = BLOCKS * STEP + 16;
/** Pixels above the highest price kept for its figure. */
const HEAD = 24;
/** Height of a line of text, in pixels. */
const LINE = 17;
/** Pixels between texts on a line. */
const GAP = 6;
/** What stands behind the last week takes no more of the width than this. */
const MOST_GUTTER = 0.28;

/** How many of the ten blocks are full. A certainty that is not there is never drawn. */
export function fullBlocks(sold: number): number {
  const n = Math.round(sold * BLOCKS);
  return n === BLOCKS && sold < 1 ? BLOCKS - 1 : n;
}

/** Axes for the weeks: each as wide as the other, prices over a lane of blocks, room for words behind the last. */
export function weeksPlane(told: WeeksTold, { width, height }: Size, measure: Measure): Plane {
  const { weeks } = told;
  const amounts = weeks.flatMap(({ price, lowest }) => (lowest === null ? [price] : [price, lowest]));
  const high = Math.max(...amounts);
  // Prices that hardly differ are not blown up to fill the plot.
  const low = Math.min(...amounts, high * 0.8);
  const scale = scaleOver(low, high, width < NARROW ? 4 : 5);
  const unit = (scale.max - scale.min) / Math.max(1, height - LANE - HEAD);
  const words = [told.ask, told.take, told.soldWords].map((text) => measure(text) + 12);
  const gutter = Math.min(width * MOST_GUTTER, Math.max(...words));
  return {
    width,
    height,
    x: {
      min: 0,
      max: (weeks.length * width) / Math.max(1, width - gutter),
      ticks: weekTicks(weeks.length, width - gutter),
    },
    y: { ...scale, min: scale.min - unit * LANE, max: scale.max + unit * HEAD },
  };
}

/** Least pixels from one week's figure to the next. */
const TICK_ROOM = 24;

/** Middles of the weeks that are named: every one, or every second, fourth, ... from the first. */
function weekTicks(weeks: number, width: number): readonly number[] {
  const each = [1, 2, 4, 8, 13, 26].find((n) => (n * width) / weeks >= TICK_ROOM) ?? 52;
  return Array.from({ length: Math.ceil(weeks / each) }, (_, i) => i * each + 0.5);
}

/** The week whose middle stands at a place on the axis. */
export function weekAt(x: number): number {
  return Math.round(x + 0.5);
}

/** What glides: of each week both ends of its price, and its lowest offer (its price while that is not shown). */
export function weekAnchors(weeks: readonly WeekMark[]): readonly Point[] {
  return weeks.flatMap(({ week, price, lowest }) => [
    { x: week - 1, y: price },
    { x: week, y: price },
    { x: week - 0.5, y: lowest ?? price },
  ]);
}

/** Where a week is hit: its whole column. */
export function weekBoxes(weeks: readonly WeekMark[], plane: Plane): readonly Box[] {
  return weeks.map(({ week }) => ({
    left: pixelX(plane, week - 1),
    right: pixelX(plane, week),
    top: 0,
    bottom: plane.height,
  }));
}

/** Weeks in which another price begins, the first among them. */
export function turns(weeks: readonly WeekMark[]): readonly WeekMark[] {
  return weeks.filter(({ price }, i) => i === 0 || price !== weeks[i - 1]?.price);
}

/** Prices where they begin, as far as they have room, and what lines and blocks mean behind the last week. */
export function weekTexts(told: WeeksTold, plane: Plane, measure: Measure): readonly PlaneText[] {
  const last = told.weeks.at(-1);
  if (last === undefined) return [];
  return [...priceTexts(told, plane, measure), ...endTexts(told, last, plane, measure)];
}

function priceTexts(told: WeeksTold, plane: Plane, measure: Measure): readonly PlaneText[] {
  const begun = turns(told.weeks).map(({ week, price }): PlaneText => {
    const text = told.sayPrice(price);
    const x = Math.min(pixelX(plane, week - 1) + 4, plane.width - measure(text));
    return { text, x, y: Math.max(LINE / 2, pixelY(plane, price) - 14), align: "left", kind: "strong" };
  });
  const [first, ...later] = begun;
  const last = later.pop();
  if (first === undefined || last === undefined) return begun;
  const meets = (a: PlaneText, b: PlaneText) =>
    b.x < a.x + measure(a.text) + GAP && Math.abs(b.y - a.y) < LINE;
  const between: PlaneText[] = [];
  for (const one of later) if (!meets(between.at(-1) ?? first, one) && !meets(one, last)) between.push(one);
  // The first and the last price are always named: the last moves aside.
  const aside = meets(first, last) ? first.x + measure(first.text) + GAP : last.x;
  return [first, ...between, { ...last, x: aside }];
}

function endTexts(told: WeeksTold, last: WeekMark, plane: Plane, measure: Measure): readonly PlaneText[] {
  const x = pixelX(plane, last.week) + 6;
  const at = (text: string, y: number): PlaneText => ({ text, x, y, align: "left", kind: "plain" });
  const ask = pixelY(plane, last.price);
  const take = last.lowest === null ? null : pixelY(plane, last.lowest);
  const sold = plane.height - (BLOCKS * STEP) / 2;
  // Words of lines that end close to each other stand one below the other.
  const apart = take === null ? LINE : Math.max(0, LINE - (take - ask)) / 2;
  return [
    at(told.ask, take === null ? ask : ask - apart),
    ...(take === null ? [] : [at(told.take, take + apart)]),
    ...(measure(told.soldWords) <= plane.width - x ? [at(told.soldWords, sold)] : []),
  ];
}
