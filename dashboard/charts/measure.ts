import type { Measure } from "./plane.ts";

/** Pixels of the texts over a plot: those of `--size-mark`. */
export const TEXT_PX = 13;

/** The letters of the page, at a size and weight. */
export function fontOf(place: Element | null, px: number, weight: number, display = false): string {
  const style = getComputedStyle(place ?? document.body);
  const family = display ? style.getPropertyValue("--font-display") : style.fontFamily;
  return `${weight} ${px}px ${family.trim() || "sans-serif"}`;
}

/** Measures texts as they are written over the plot. */
export function measureIn(place: Element | null): Measure {
  const ink = document.createElement("canvas").getContext("2d");
  const font = fontOf(place, TEXT_PX, 600);
  return (text) => {
    if (ink === null) return text.length * TEXT_PX * 0.6;
    ink.font = font;
    return ink.measureText(text).width;
  };
}
