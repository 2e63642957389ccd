import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { CHART, withKeys } from "../words/chart.ts";
import type { Drawn } from "./drawn.ts";
import { onTheme } from "./palette.ts";
import type { Strip } from "./pen.ts";
import { nearest, type Place, placeOf, sameOr, type Telling } from "./place.ts";
import { useMarks } from "./useMarks.ts";

interface PlotLayerProps<S> {
  /** Title, best, worst and what crosses the goal: the chart in a sentence. */
  readonly label: string;
  readonly create: (canvas: HTMLCanvasElement) => Drawn<S>;
  readonly settings: (place: Place, active: number | null) => S;
  /** One for each row; null where a row has no mark. */
  readonly tellings: readonly (Telling | null)[];
  readonly onPick?: (row: number) => void;
  /** A single mark whose figures stand beside it: a picture, without marks to move between. */
  readonly quiet?: boolean;
}

/**
 * The canvas behind a list of rows. It lies over the elements of class "plot" inside its parent and draws one
 * strip for each; names and figures stay text beside it. One tab stop: arrows move between the marks.
 */
export function PlotLayer<S>({ label, create, settings, tellings, onPick, quiet }: PlotLayerProps<S>) {
  const layer = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const chart = useRef<Drawn<S> | null>(null);
  const shownAt = useRef("");
  const [place, setPlace] = useState<Place | null>(null);
  const { active, telling, spoken, point, onKeyDown, onBlur, onPointerLeave } = useMarks(tellings, onPick);
  const [themed, setThemed] = useState(0);
  // The canvas is taken over once for a list of rows; a list of another length is measured anew.
  useLayoutEffect(() => {
    const box = layer.current?.parentElement;
    if (canvas.current === null || box === null || box === undefined) return;
    chart.current = create(canvas.current);
    const measure = () => setPlace((before) => sameOr(before, placeOf(box)));
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    for (const plot of box.querySelectorAll(".plot")) observer.observe(plot);
    void document.fonts.ready.then(measure);
    const stop = onTheme(() => setThemed((n) => n + 1));
    return () => {
      observer.disconnect();
      stop();
      chart.current?.destroy();
      chart.current = null;
    };
  }, [tellings.length]);
  // Rows that changed places or words may stand elsewhere though nothing has another size.
  const told = JSON.stringify(tellings);
  useLayoutEffect(() => {
    const box = layer.current?.parentElement;
    if (box !== null && box !== undefined) setPlace((before) => sameOr(before, placeOf(box)));
  }, [told]);
  // A new theme is drawn with the same settings.
  useEffect(() => {
    if (place === null || place.width <= 0) return;
    const standing = JSON.stringify(place);
    const glide = shownAt.current === standing;
    shownAt.current = standing;
    chart.current?.show(settings(place, active), glide);
  }, [place, active, settings, themed]);

  const rowAt = (event: MouseEvent) =>
    place === null ? null : nearest(event.offsetY, place.strips, tellings);

  // Out of sight until it has its place, so that nothing is seen to move.
  const style =
    place === null ? { visibility: "hidden" } : { left: `${place.left}px`, width: `${place.width}px` };
  if (quiet === true) {
    return (
      <div ref={layer} class="plotlayer" role="img" aria-label={label} style={style}>
        <div aria-hidden="true">
          <canvas ref={canvas} />
        </div>
      </div>
    );
  }
  return (
    <div
      ref={layer}
      class={onPick === undefined ? "plotlayer" : "plotlayer pickable"}
      role="application"
      aria-roledescription={CHART}
      aria-label={withKeys(label)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the one tab stop of the chart, moved in by arrow keys
      tabIndex={0}
      style={style}
      onKeyDown={onKeyDown}
      onBlur={onBlur}
      onPointerLeave={onPointerLeave}
      onPointerMove={(event) => point(rowAt(event))}
      onClick={(event) => {
        const row = rowAt(event);
        if (row !== null) onPick?.(row);
      }}
    >
      <div aria-hidden="true">
        <canvas ref={canvas} />
      </div>
      {telling !== null && place !== null && active !== null && (
        <Tip telling={telling} strip={place.strips[active]} />
      )}
      <p class="sr" aria-live="polite">
        {spoken}
      </p>
    </div>
  );
}

function Tip({ telling, strip }: { telling: Telling; strip: Strip | undefined }) {
  if (strip === undefined) return null;
  const side =
    telling.at > 50
      ? { right: `${Math.max(0, 100 - telling.at)}%` }
      : { left: `${Math.max(0, telling.at)}%` };
  return (
    <div class="tip" aria-hidden="true" style={{ top: `${strip.bottom - 4}px`, ...side }}>
      <b>{telling.title}</b>
      {telling.lines.map((line) => (
        <span key={line}>{line}</span>
      ))}
    </div>
  );
}
