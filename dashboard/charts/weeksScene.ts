import { stroke } from "./marks.ts";
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
import {
  BLOCK,
  BLOCKS,
  fullBlocks,
  STEP,
  turns,
  type WeekMark,
  type WeeksTold,
  weekAnchors,
  weekBoxes,
  weeksPlane,
  weekTexts,
} from "./weeks.ts";

/** Price over weeks: the asking price as steps, the lowest offer to take dotted, the chance sold as ten blocks a week. */
export function weeksScene(told: WeeksTold, size: Size, measure: Measure): Scene {
  const plane = weeksPlane(told, size, measure);
  const { weeks } = told;
  return {
    plane,
    order: `${weeks.length} ${hasLowest(weeks)}`,
    anchors: weekAnchors(weeks),
    marks: weekBoxes(weeks, plane),
    texts: weekTexts(told, plane, measure),
    paint(pen) {
      paintGround(pen, plane);
      for (const week of weeks) paintBlocks(pen, plane, week);
      paintActive(pen, pen.active === null ? undefined : weeks[pen.active], plane);
      if (hasLowest(weeks)) paintLowest(pen);
      paintPrices(pen, turns(weeks));
    },
  };
}

function hasLowest(weeks: readonly WeekMark[]): boolean {
  return weeks.some(({ lowest }) => lowest !== null);
}

function paintGround({ ink, palette }: Pen, plane: Plane): void {
  for (const tick of plane.y.ticks) {
    const y = pixelY(plane, tick);
    stroke(ink, { x: 0, y }, { x: plane.width, y }, palette.grid, 1);
  }
}

/** Full blocks are filled, the others outlined: told apart without colour. */
function paintBlocks({ ink, palette }: Pen, plane: Plane, { week, sold }: WeekMark): void {
  const gap = Math.min(6, Math.max(1, plane.width / 200));
  const left = pixelX(plane, week - 1) + gap / 2;
  const width = Math.max(1, pixelX(plane, week) - left - gap / 2);
  const full = fullBlocks(sold);
  ink.save();
  ink.setLineDash([]);
  ink.fillStyle = palette.of("--ink-2");
  ink.strokeStyle = palette.edge;
  ink.lineWidth = 1;
  for (let i = 0; i < BLOCKS; i += 1) {
    const top = plane.height - (i + 1) * STEP + (STEP - BLOCK);
    if (i < full) ink.fillRect(left, top, width, BLOCK);
    else ink.strokeRect(left + 0.5, top + 0.5, Math.max(0, width - 1), BLOCK - 1);
  }
  ink.restore();
}

/** Least pixels from one ring to the next. */
const RING_ROOM = 13;

/** The asking price: one line of steps, a ring where another price begins. */
function paintPrices({ ink, at, palette }: Pen, begun: readonly WeekMark[]): void {
  const ends = at.filter((_, i) => i % 3 < 2);
  line(ink, ends, () => {
    ink.lineWidth = 3;
    ink.lineJoin = "round";
    ink.strokeStyle = palette.ink;
  });
  let last = Number.NEGATIVE_INFINITY;
  for (const { week } of begun) {
    const point = at[(week - 1) * 3];
    // Where weeks are narrow, rings would run into each other and hide the line.
    if (point === undefined || point.x - last < RING_ROOM) continue;
    last = point.x;
    ink.save();
    ink.setLineDash([]);
    ink.beginPath();
    ink.arc(point.x + (week === 1 ? 5 : 0), point.y, 5, 0, Math.PI * 2);
    ink.fillStyle = palette.surface;
    ink.fill();
    ink.lineWidth = 2.5;
    ink.strokeStyle = palette.ink;
    ink.stroke();
    ink.restore();
  }
}

/** The lowest offer to take: round dots along the middles of the weeks, level to the ends. */
function paintLowest({ ink, at, palette }: Pen): void {
  const middles = at.filter((_, i) => i % 3 === 2);
  const first = middles[0];
  const last = middles.at(-1);
  if (first === undefined || last === undefined) return;
  const start = { x: at[0]?.x ?? first.x, y: first.y };
  const end = { x: at.at(-2)?.x ?? last.x, y: last.y };
  line(ink, [start, ...middles, end], () => {
    ink.lineWidth = 2.5;
    ink.lineCap = "round";
    ink.strokeStyle = palette.ink;
    ink.setLineDash([0.1, 6]);
  });
}

function line(ink: CanvasRenderingContext2D, points: readonly Point[], style: () => void): void {
  ink.save();
  ink.setLineDash([]);
  style();
  ink.beginPath();
  for (const { x, y } of points) ink.lineTo(x, y);
  ink.stroke();
  ink.restore();
}

function paintActive({ ink, palette }: Pen, week: WeekMark | undefined, plane: Plane): void {
  if (week === undefined) return;
  const left = pixelX(plane, week.week - 1);
  ink.save();
  ink.setLineDash([]);
  ink.strokeStyle = palette.edge;
  ink.lineWidth = 1.5;
  ink.strokeRect(left + 0.75, 0.75, pixelX(plane, week.week) - left - 1.5, plane.height - 1.5);
  ink.restore();
}
