import { goalFlag } from "./goalFlag.ts";
import type { Box, Measure, Plane, PlaneText, Point, Size } from "./plane.ts";
import { NARROW, pixelX, pixelY } from "./plane.ts";
import { rateScale, scaleOver } from "./scale.ts";
import { signBox } from "./textBox.ts";

/** What one find of the merit order brings: as wide as its hours, as high as what an hour earns. */
export interface Block {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly hours: number;
  readonly rate: number;
  readonly p10: number;
  readonly p90: number;
  /** Filled; else outlined only. */
  readonly chosen: boolean;
  /** Dashed outline: hardly looked at. */
  readonly hardlyLooked: boolean;
  readonly sign: string;
  readonly token: string;
}

/** A block with the hours that lie before and behind it. */
export interface PlacedBlock extends Block {
  readonly from: number;
  readonly to: number;
}

export interface BlocksTold {
  readonly blocks: readonly Block[];
  readonly goal: number;
  /** On the flag; the shorter where there is little room. */
  readonly goalWords: readonly [long: string, short: string];
  /** Hours there are; null: no limit. */
  readonly hours: number | null;
  readonly hoursWords: string;
}

/** Pixels at the foot of the plot that are kept for numbers and names. */
export const LANE = 24;
/** Budgets further beyond the last block than this would squeeze the blocks: their line is left out. */
const FAR = 1.35;

/** Blocks side by side in the order given. */
export function sideBySide(blocks: readonly Block[]): readonly PlacedBlock[] {
  let from = 0;
  return blocks.map((block) => {
    const placed = { ...block, from, to: from + block.hours };
    from = placed.to;
    return placed;
  });
}

/** Whether the upright line of the hours there are has its place on the axis. */
export function hasHoursLine({ blocks, hours }: Pick<BlocksTold, "blocks" | "hours">): boolean {
  const all = blocks.reduce((sum, block) => sum + block.hours, 0);
  return hours !== null && hours <= Math.max(all, 1) * FAR;
}

/** Axes for the blocks: hours from nought, rates with nought and the goal, and a lane for names below. */
export function blocksPlane(told: BlocksTold, { width, height }: Size): Plane {
  const { blocks, goal, hours } = told;
  const all = blocks.reduce((sum, block) => sum + block.hours, 0);
  const right = Math.max(all, hasHoursLine(told) ? (hours ?? 0) * 1.04 : 0, 1);
  const x = scaleOver(0, right, width < NARROW ? 5 : 9);
  const y = rateScale(blocks, goal, 6);
  const unit = (y.max - y.min) / Math.max(1, height - LANE);
  return {
    width,
    height,
    x: { ...x, min: 0, max: right * 1.01, ticks: x.ticks.filter((tick) => tick >= 0 && tick <= right) },
    y: { ...y, min: y.min - unit * LANE },
  };
}

/** What glides: of each block its left top, right top, and the two ends of its range. */
export function blockAnchors(blocks: readonly PlacedBlock[], plane: Plane): readonly Point[] {
  const cut = (value: number) => Math.min(plane.y.max, Math.max(foot(plane), value));
  return blocks.flatMap(({ from, to, rate, p10, p90 }) => {
    const middle = (from + to) / 2;
    return [
      { x: from, y: rate },
      { x: to, y: rate },
      { x: middle, y: cut(p10) },
      { x: middle, y: cut(p90) },
    ];
  });
}

/** The lowest rate above the lane of names. */
export function foot({ y, height }: Plane): number {
  return y.min + ((y.max - y.min) * LANE) / height;
}

/** Where a block is hit: its whole column. */
export function blockMarks(blocks: readonly PlacedBlock[], plane: Plane): readonly Box[] {
  return blocks.map(({ from, to }) => ({
    left: pixelX(plane, from),
    right: pixelX(plane, to),
    top: 0,
    bottom: plane.height,
  }));
}

/** Number and name in the lane where there is room, else the number, else nothing; and what the two lines mean. */
export function blockTexts(
  blocks: readonly PlacedBlock[],
  told: BlocksTold,
  plane: Plane,
  measure: Measure,
): readonly PlaneText[] {
  const lane = plane.height - LANE / 2;
  const named = blocks.flatMap(({ number, name, from, to }): PlaneText[] => {
    const room = pixelX(plane, to) - pixelX(plane, from) - 4;
    const text = [`${number} ${name}`, String(number)].find((one) => measure(one) <= room);
    if (text === undefined) return [];
    return [{ text, x: pixelX(plane, (from + to) / 2), y: lane, align: "center", kind: "strong" }];
  });
  const goal = told.goalWords[plane.width < NARROW ? 1 : 0];
  const flag = goalFlag(goal, pixelY(plane, told.goal), plane, inTheWay(blocks, told, plane), measure);
  if (!hasHoursLine(told)) return [...named, flag];
  const at = pixelX(plane, told.hours ?? 0);
  // Beside the line, on the side that has room.
  const align = at + measure(told.hoursWords) + 12 < plane.width ? "left" : "right";
  const hours: PlaneText = {
    text: told.hoursWords,
    x: at + (align === "left" ? 6 : -6),
    y: 12,
    align,
    kind: "strong",
  };
  return [...named, flag, hours];
}

/** The signs, and the upright line of the hours there are. */
function inTheWay(blocks: readonly PlacedBlock[], told: BlocksTold, plane: Plane): readonly Box[] {
  const signs = blocks.map(({ from, to, rate }) =>
    signBox({ x: pixelX(plane, (from + to) / 2), y: pixelY(plane, rate) }),
  );
  if (!hasHoursLine(told)) return signs;
  const x = pixelX(plane, told.hours ?? 0);
  return [...signs, { left: x - 2, right: x + 2, top: 0, bottom: plane.height }];
}
