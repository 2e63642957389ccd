import type { Strip } from "./pen.ts";

/** Where a chart stands on the page. */
export interface Place {
  readonly strips: readonly Strip[];
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

/** What is told about a mark, seen and spoken. */
export interface Telling {
  readonly title: string;
  readonly lines: readonly string[];
  /** Where the mark stands, in per cent of the axis. */
  readonly at: number;
}

export function placeOf(box: Element): Place {
  const outer = box.getBoundingClientRect();
  const rects = [...box.querySelectorAll(".plot")].map((plot) => plot.getBoundingClientRect());
  // Whole pixels, so that strips that touch leave no seam between them.
  const strips = rects.map(({ top, bottom }) => ({
    top: Math.round(top - outer.top),
    bottom: Math.round(bottom - outer.top),
  }));
  const first = rects[0];
  return {
    strips,
    left: first === undefined ? 0 : first.left - outer.left,
    width: first?.width ?? 0,
    height: outer.height,
  };
}

export function sameOr(before: Place | null, after: Place): Place {
  return before !== null && JSON.stringify(before) === JSON.stringify(after) ? before : after;
}

/** The row that a key leads to; null leaves the marks, undefined is no key of ours. */
export function target(
  key: string,
  active: number | null,
  tellings: readonly (object | null)[],
): number | null | undefined {
  const rows = tellings.flatMap((telling, i) => (telling === null ? [] : [i]));
  const here = active === null ? -1 : rows.indexOf(active);
  switch (key) {
    case "ArrowDown":
    case "ArrowRight":
      return rows[Math.min(here + 1, rows.length - 1)] ?? null;
    case "ArrowUp":
    case "ArrowLeft":
      return rows[Math.max(here - 1, 0)] ?? null;
    case "Home":
      return rows[0] ?? null;
    case "End":
      return rows.at(-1) ?? null;
    case "Escape":
      return null;
    default:
      return undefined;
  }
}

export function nearest(
  y: number,
  strips: readonly Strip[],
  tellings: readonly (Telling | null)[],
): number | null {
  const row = strips.findIndex(({ top, bottom }) => y >= top && y <= bottom);
  return row >= 0 && tellings[row] !== null && tellings[row] !== undefined ? row : null;
}
