import type { PlaneSpec } from "./PlaneLayer.tsx";
import type { Measure, Size } from "./plane.ts";

/** A find as the picture names it. */
export interface PictureKey {
  readonly sign: string;
  readonly token: string;
  readonly text: string;
}

/** What a picture of a chart says, so that it stands alone. */
export interface PictureTold {
  readonly title: string;
  readonly lines: readonly string[];
  readonly key: readonly PictureKey[];
  /** Where it comes from, and that finds or prices are invented. */
  readonly note: string;
  readonly spec: PlaneSpec;
}

/** Where the parts of a picture stand, in pixels before they are doubled. */
export interface PictureLayout extends Size {
  readonly title: readonly string[];
  readonly lines: readonly string[];
  readonly note: readonly string[];
  readonly titleAt: number;
  readonly linesAt: number;
  readonly upAt: number;
  readonly plot: Size & { readonly left: number; readonly top: number };
  readonly keyAt: number;
  readonly keyColumns: number;
  readonly noteAt: number;
}

/** Pixels of the picture for each pixel of its layout. */
export const PICTURE_RATIO = 2;
export const PICTURE_WIDTH = 1000;
export const PAD = 32;
export const LEFT = 76;
const PLOT_HEIGHT = 440;
export const LINE = { title: 32, text: 22, key: 26 };
export const FONT = { title: 25, text: 15 };

/** Breaks a text into lines of at most `width` pixels, between words; none where it says nothing. */
export function wrapped(text: string, width: number, measure: Measure): readonly string[] {
  if (text === "") return [];
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && measure(`${last} ${word}`) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** From top to bottom: title, lines, chart with its axes, the finds by number, the note. */
export function pictureLayout(
  told: Omit<PictureTold, "spec">,
  measures: { readonly title: Measure; readonly text: Measure },
): PictureLayout {
  const width = PICTURE_WIDTH;
  const inner = width - 2 * PAD;
  const title = wrapped(told.title, inner, measures.title);
  const lines = told.lines.flatMap((line) => wrapped(line, inner, measures.text));
  const note = wrapped(told.note, inner, measures.text);
  const titleAt = PAD;
  const linesAt = titleAt + title.length * LINE.title + 6;
  const upAt = linesAt + lines.length * LINE.text + 14;
  const plot = { left: LEFT, top: upAt + LINE.text + 4, width: width - LEFT - PAD, height: PLOT_HEIGHT };
  const keyAt = plot.top + plot.height + 60;
  const widest = Math.max(1, ...told.key.map(({ text }) => measures.text(text) + 48));
  const keyColumns = Math.max(1, Math.min(3, Math.floor(inner / widest)));
  const keyRows = Math.ceil(told.key.length / keyColumns);
  const noteAt = keyAt + keyRows * LINE.key + 16;
  const height = Math.ceil(noteAt + note.length * LINE.text + PAD / 2);
  return { width, height, title, lines, note, titleAt, linesAt, upAt, plot, keyAt, keyColumns, noteAt };
}
