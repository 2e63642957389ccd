import { paintSign, ring, stroke, whisker } from "./marks.ts";
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
  rayEnd,
  type SpreadPoint,
  type SpreadTold,
  spreadAnchors,
  spreadMarks,
  spreadPlane,
} from "./spread.ts";
import { spreadTexts } from "./spreadTexts.ts";

/** Points with their two ranges over rays of equal rate. */
export function spreadScene(told: SpreadTold, size: Size, measure: Measure): Scene {
  const plane = spreadPlane(told, size);
  const { points } = told;
  return {
    plane,
    order: points.map(({ id }) => id).join(" "),
    anchors: spreadAnchors(points, plane),
    marks: spreadMarks(points, plane),
    texts: spreadTexts(told, plane, measure),
    paint(pen) {
      paintGround(pen, plane, told);
      for (const point of points) paintOthers(pen, plane, point);
      [...points.entries()].reverse().forEach(([i, point]) => {
        paintRanges(pen, plane, point, pen.at.slice(i * 5, i * 5 + 5));
      });
      // The first last: the chosen stand before those left.
      [...points.entries()].reverse().forEach(([i, point]) => {
        const at = pen.at[i * 5];
        if (at === undefined) return;
        const { sign: path, token, filled, hatched } = point;
        paintSign(pen.ink, { path, token, filled, hatched }, at.x, at.y, pen.palette);
        if (i === pen.active) ring(pen.ink, at.x, at.y, pen.palette);
      });
    },
  };
}

function paintGround({ ink, palette }: Pen, plane: Plane, told: SpreadTold): void {
  const { width, height } = plane;
  const at = (point: Point) => ({ x: pixelX(plane, point.x), y: pixelY(plane, point.y) });
  const origin = at({ x: 0, y: 0 });
  const end = at(rayEnd(plane, told.ground));
  ink.save();
  ink.fillStyle = palette.lossGround;
  ink.beginPath();
  // Right of the origin only: fewer hours than none, or less cash, there is not.
  ink.moveTo(origin.x, origin.y);
  ink.lineTo(end.x, end.y);
  ink.lineTo(width, end.y);
  ink.lineTo(width, height);
  ink.lineTo(origin.x, height);
  ink.fill();
  ink.restore();
  for (const tick of plane.y.ticks) {
    const y = pixelY(plane, tick);
    stroke(ink, { x: 0, y }, { x: width, y }, tick === 0 ? palette.edge : palette.grid, tick === 0 ? 1.5 : 1);
  }
  for (const tick of plane.x.ticks) {
    const x = pixelX(plane, tick);
    stroke(
      ink,
      { x, y: 0 },
      { x, y: height },
      tick === 0 ? palette.edge : palette.grid,
      tick === 0 ? 1.5 : 1,
    );
  }
  for (const { slope, kind } of told.rays) {
    const tip = at(rayEnd(plane, slope));
    if (kind === "goal") stroke(ink, origin, tip, palette.goal, 1.5, [5, 4]);
    else stroke(ink, origin, tip, palette.edge, kind === "edge" ? 2 : 1);
  }
}

/** A small sign nearer to the edge than this would be cut, in pixels. */
const EDGE = 6;

function paintOthers({ ink, palette }: Pen, plane: Plane, { x, y, others }: SpreadPoint): void {
  const own = { x: pixelX(plane, x.at), y: pixelY(plane, y.at) };
  for (const other of others) {
    const at = { x: pixelX(plane, other.x), y: pixelY(plane, other.y) };
    // The axes are those of the courses shown; what lies beyond them is told on the find's own page.
    if (at.x > plane.width - EDGE || at.y < EDGE || at.y > plane.height - EDGE) continue;
    stroke(ink, own, at, palette.grid, 1.5);
    paintSign(
      ink,
      { path: other.sign, token: other.token, filled: false, hatched: false, pale: true },
      at.x,
      at.y,
      palette,
    );
  }
}

function paintRanges({ ink, palette }: Pen, plane: Plane, point: SpreadPoint, at: readonly Point[]): void {
  const [, left, right, low, high] = at;
  if (left === undefined || right === undefined || low === undefined || high === undefined) return;
  const colour = palette.of(point.token);
  const { x, y } = plane;
  whisker(ink, left, right, colour, [(point.x.low ?? 0) < x.min, (point.x.high ?? 0) > x.max]);
  whisker(ink, low, high, colour, [(point.y.low ?? 0) < y.min, (point.y.high ?? 0) > y.max]);
}
