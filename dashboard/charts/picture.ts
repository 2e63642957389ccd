import { fontOf, measureIn, TEXT_PX } from "./measure.ts";
import { paletteOf } from "./palette.ts";
import { drawSign } from "./pen.ts";
import {
  FONT,
  LEFT,
  LINE,
  PAD,
  PICTURE_RATIO,
  type PictureLayout,
  type PictureTold,
  pictureLayout,
} from "./pictureLayout.ts";
import { type PlaneText, pixelX, pixelY, type Scene } from "./plane.ts";
import { createPlane } from "./planeChart.ts";

/**
 * Draws a chart with its title, axes, names and note, on the page's ground and in its theme.
 * @param page stands where the chart stands: its colours and letters are taken
 * @returns a PNG, 2000 pixels wide
 */
export async function pictureOf(told: PictureTold, page: HTMLElement): Promise<Blob> {
  const canvas = document.createElement("canvas");
  const ink = canvas.getContext("2d");
  if (ink === null) throw new Error("This browser draws no pictures.");
  const title = fontOf(page, FONT.title, 620, true);
  const text = fontOf(page, FONT.text, 400);
  const measureWith = (font: string) => (words: string) => {
    ink.font = font;
    return ink.measureText(words).width;
  };
  const layout = pictureLayout(told, { title: measureWith(title), text: measureWith(text) });
  canvas.width = layout.width * PICTURE_RATIO;
  canvas.height = layout.height * PICTURE_RATIO;
  ink.scale(PICTURE_RATIO, PICTURE_RATIO);
  // The tokens are read from an element of the page: this canvas is not in it.
  const palette = paletteOf(page);
  ink.fillStyle = palette.surface;
  ink.fillRect(0, 0, layout.width, layout.height);
  ink.textBaseline = "middle";
  const write = (words: string, x: number, y: number, colour: string, align: CanvasTextAlign = "left") => {
    ink.fillStyle = palette.of(colour);
    ink.textAlign = align;
    ink.fillText(words, x, y);
  };
  ink.font = title;
  layout.title.forEach((line, i) => {
    write(line, PAD, layout.titleAt + (i + 0.5) * LINE.title, "--ink");
  });
  ink.font = text;
  layout.lines.forEach((line, i) => {
    write(line, PAD, layout.linesAt + (i + 0.5) * LINE.text, "--ink-2");
  });
  const { plot } = layout;
  const scene = told.spec.scene(plot, measureIn(page));
  drawPlot(ink, scene, plot, page);
  ink.save();
  ink.translate(plot.left, plot.top);
  ink.font = fontOf(page, TEXT_PX, 400);
  const { x, y } = scene.plane;
  for (const tick of y.ticks) write(told.spec.sayY(tick), -8, pixelY(scene.plane, tick), "--ink-3", "right");
  for (const tick of x.ticks)
    write(told.spec.sayX(tick), pixelX(scene.plane, tick), plot.height + 14, "--ink-3", "center");
  write(told.spec.across, plot.width, plot.height + 36, "--ink-2", "right");
  write(told.spec.up, PAD - LEFT, -LINE.text / 2 - 4, "--ink-2");
  for (const one of scene.texts) drawText(ink, one, page);
  ink.restore();
  ink.font = text;
  const across = (layout.width - 2 * PAD) / layout.keyColumns;
  told.key.forEach(({ sign, token, text: words }, i) => {
    const at = PAD + (i % layout.keyColumns) * across;
    const middle = layout.keyAt + (Math.floor(i / layout.keyColumns) + 0.5) * LINE.key;
    drawSign(ink, sign, at + 8, middle, palette.of(token), palette);
    write(words, at + 26, middle, "--ink");
  });
  layout.note.forEach((line, i) => {
    write(line, PAD, layout.noteAt + (i + 0.5) * LINE.text, "--ink-2");
  });
  return await new Promise((done, fail) => {
    canvas.toBlob(
      (blob) => (blob === null ? fail(new Error("No picture came of it.")) : done(blob)),
      "image/png",
    );
  });
}

/** The chart is drawn anew at the picture's own size: what stands on the page may be a phone's. */
function drawPlot(
  ink: CanvasRenderingContext2D,
  scene: Scene,
  plot: PictureLayout["plot"],
  page: HTMLElement,
) {
  const drawn = document.createElement("canvas");
  const chart = createPlane(drawn, () => paletteOf(page), PICTURE_RATIO);
  chart.show(scene, null);
  ink.drawImage(drawn, plot.left, plot.top, plot.width, plot.height);
  chart.destroy();
}

const FLAG_PAD = 9;

function drawText(ink: CanvasRenderingContext2D, { text, x, y, align, kind }: PlaneText, page: HTMLElement) {
  const palette = paletteOf(page);
  ink.save();
  ink.font = fontOf(page, TEXT_PX, kind === "plain" ? 400 : 600);
  ink.textAlign = align;
  if (kind === "flag") {
    const width = ink.measureText(text).width + 2 * FLAG_PAD;
    const left = align === "right" ? x - width : align === "left" ? x : x - width / 2;
    ink.fillStyle = palette.of("--flag");
    ink.beginPath();
    ink.moveTo(left, y - 10);
    ink.lineTo(left + width, y - 10);
    ink.lineTo(left + width, y + 10);
    ink.lineTo(left, y + 10);
    ink.lineTo(left + 6, y);
    ink.fill();
    ink.fillStyle = palette.of("--on-flag");
    ink.textAlign = "center";
    ink.fillText(text, left + width / 2 + 2, y);
  } else {
    ink.strokeStyle = palette.surface;
    ink.lineWidth = 4;
    ink.lineJoin = "round";
    ink.strokeText(text, x, y);
    ink.fillStyle = palette.of(kind === "plain" ? "--ink-2" : "--ink");
    ink.fillText(text, x, y);
  }
  ink.restore();
}
