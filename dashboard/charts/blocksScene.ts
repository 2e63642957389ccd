import {
  type BlocksTold,
  blockAnchors,
  blockMarks,
  blocksPlane,
  blockTexts,
  foot,
  hasHoursLine,
  type PlacedBlock,
  sideBySide,
} from "./blocks.ts";
import { paintSign, stroke, whisker } from "./marks.ts";
import { hatch } from "./pen.ts";
import {
  type Measure,
  type Pen,
  type Plane,
  type Point,
  pixelX,
  pixelY,
  type Scene,
  type Size,
} from "./plane.ts";

/** The merit order: blocks side by side, nought, the goal, and the upright line of the hours there are. */
export function blocksScene(told: BlocksTold, size: Size, measure: Measure): Scene {
  const plane = blocksPlane(told, size);
  const blocks = sideBySide(told.blocks);
  return {
    plane,
    order: blocks.map(({ id }) => id).join(" "),
    anchors: blockAnchors(blocks, plane),
    marks: blockMarks(blocks, plane),
    texts: blockTexts(blocks, told, plane, measure),
    paint(pen) {
      paintGround(pen, plane);
      blocks.forEach((block, i) => {
        paintBlock(pen, plane, block, pen.at.slice(i * 4, i * 4 + 4), told.goal);
      });
      paintLines(pen, plane, told);
      // The first last: the chosen stand before those left.
      [...blocks.entries()].reverse().forEach(([i, block]) => {
        paintRange(pen, plane, block, pen.at.slice(i * 4, i * 4 + 4));
      });
      paintActive(pen, pen.active === null ? undefined : blocks[pen.active], plane);
    },
  };
}

function paintGround({ ink, palette }: Pen, plane: Plane): void {
  const { width } = plane;
  const nought = pixelY(plane, 0);
  const low = pixelY(plane, foot(plane));
  ink.fillStyle = palette.lossGround;
  ink.fillRect(0, nought, width, low - nought);
  for (const tick of plane.y.ticks) {
    if (tick < foot(plane)) continue;
    const y = pixelY(plane, tick);
    stroke(ink, { x: 0, y }, { x: width, y }, palette.grid, 1);
  }
}

function paintBlock(pen: Pen, plane: Plane, block: PlacedBlock, at: readonly Point[], goal: number): void {
  const [left, right] = at;
  if (left === undefined || right === undefined) return;
  const { ink, palette } = pen;
  const colour = palette.of(block.token);
  const nought = pixelY(plane, 0);
  const top = Math.min(left.y, nought);
  const box = {
    x: left.x + 1,
    y: top,
    width: Math.max(1, right.x - left.x - 2),
    height: Math.abs(left.y - nought),
  };
  ink.save();
  ink.beginPath();
  ink.rect(box.x, box.y, box.width, box.height);
  if (block.chosen) {
    ink.save();
    ink.clip();
    ink.fillStyle = colour;
    ink.globalAlpha = palette.band;
    ink.fillRect(box.x, box.y, box.width, box.height);
    // What stands above the goal is in fuller colour, as in every chart.
    ink.globalAlpha = palette.bandStrong;
    ink.fillRect(box.x, box.y, box.width, Math.max(0, pixelY(plane, goal) - box.y));
    ink.restore();
  }
  if (block.rate < 0)
    hatch(ink, box.x, box.x + box.width, { top: box.y, bottom: box.y + box.height }, palette);
  ink.strokeStyle = colour;
  ink.lineWidth = block.chosen ? 2 : 1.5;
  ink.setLineDash(block.hardlyLooked ? [4, 3] : []);
  ink.strokeRect(box.x, box.y, box.width, box.height);
  ink.restore();
}

function paintLines({ ink, palette }: Pen, plane: Plane, told: BlocksTold): void {
  const { width } = plane;
  const nought = pixelY(plane, 0);
  stroke(ink, { x: 0, y: nought }, { x: width, y: nought }, palette.edge, 1.5);
  const goal = pixelY(plane, told.goal);
  stroke(ink, { x: 0, y: goal }, { x: width, y: goal }, palette.goal, 1.5, [5, 4]);
  if (!hasHoursLine(told)) return;
  const x = pixelX(plane, told.hours ?? 0);
  // Not through the names below.
  stroke(ink, { x, y: 0 }, { x, y: pixelY(plane, foot(plane)) }, palette.ink, 2.5);
}

/** Narrower columns have no room for a sign, or not even for a range: those are told by the table. In pixels. */
const SIGN_ROOM = 15;
const RANGE_ROOM = 6;

function paintRange({ ink, palette }: Pen, plane: Plane, block: PlacedBlock, at: readonly Point[]): void {
  const [left, right, low, high] = at;
  if (left === undefined || right === undefined || low === undefined || high === undefined) return;
  if (right.x - left.x < RANGE_ROOM) return;
  whisker(ink, low, high, palette.ink, [block.p10 < foot(plane), block.p90 > plane.y.max]);
  if (right.x - left.x < SIGN_ROOM) return;
  const style = { path: block.sign, token: block.token, filled: block.chosen, hatched: false };
  paintSign(ink, style, (left.x + right.x) / 2, left.y, palette);
}

function paintActive({ ink, palette }: Pen, block: PlacedBlock | undefined, plane: Plane): void {
  if (block === undefined) return;
  const left = pixelX(plane, block.from);
  ink.save();
  ink.setLineDash([]);
  ink.strokeStyle = palette.edge;
  ink.lineWidth = 1.5;
  ink.strokeRect(left + 0.75, 0.75, pixelX(plane, block.to) - left - 1.5, plane.height - 1.5);
  ink.restore();
}
