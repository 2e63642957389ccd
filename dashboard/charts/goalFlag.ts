import type { Box, Measure, PlaneText, Size } from "./plane.ts";
import { meets, textBox } from "./textBox.ts";

/** From a flag's middle to the line at its foot or top, and the steps in which it looks for a free place, in pixels. */
const TO_LINE = 11;
const STEP = 4;

/**
 * The goal's flag at its line: at the right end, standing on the line, else hanging from it; where it would cover something there, as far right as it covers
 * nothing; where there is no such place, at the right end all the same.
 * @param line the goal's height
 * @param avoid what is not to be covered
 */
export function goalFlag(
  text: string,
  line: number,
  { width }: Size,
  avoid: readonly Box[],
  measure: Measure,
): PlaneText {
  const at = (x: number, y: number): PlaneText => ({ text, x, y, align: "right", kind: "flag" });
  for (let x = width; x > 0; x -= STEP)
    for (const y of [line - TO_LINE, line + TO_LINE]) {
      const box = textBox(at(x, y), measure);
      if (box.left >= 0 && !avoid.some((other) => meets(box, other))) return at(x, y);
    }
  return at(width, line - TO_LINE);
}
