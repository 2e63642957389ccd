import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { CHART, withKeys } from "../words/chart.ts";
import { type Drawn, drawnLater } from "./drawn.ts";
import { measureIn } from "./measure.ts";
import { MarkTip, OverText, Ticks } from "./PlaneTexts.tsx";
import { onTheme, paletteOf } from "./palette.ts";
import type { Telling } from "./place.ts";
import { type Measure, markAt, type Scene, type Size } from "./plane.ts";
import { createPlane } from "./planeChart.ts";
import { useMarks } from "./useMarks.ts";

/** A chart of two axes: its sentence, what the axes count, and how it is drawn at a size. */
export interface PlaneSpec {
  /** Title, best, worst: the chart in a sentence. */
  readonly label: string;
  readonly across: string;
  readonly up: string;
  readonly sayX: (value: number) => string;
  readonly sayY: (value: number) => string;
  /** Must change only with what it draws. */
  readonly scene: (size: Size, measure: Measure) => Scene;
}

interface PlaneLayerProps {
  readonly spec: PlaneSpec;
  /** One for each mark. */
  readonly tellings: readonly Omit<Telling, "at">[];
  readonly dimmed: boolean;
  /** Opens what a mark stands for; absent, a tap only tells about it. */
  readonly onPick?: (mark: number) => void;
}

interface Shown {
  readonly scene: Scene;
  readonly active: number | null;
}

/** Drawn in a task of its own: the page answers first. */
const createPlaneLater = drawnLater<Shown>(async () => (canvas) => {
  const { show, destroy } = createPlane(canvas, () => paletteOf(canvas));
  return { show: ({ scene, active }) => show(scene, active), destroy };
});

/** A canvas with two axes; figures and names are text over and beside it. One tab stop: arrows move between the marks. */
export function PlaneLayer({ spec, tellings, dimmed, onPick }: PlaneLayerProps) {
  const plot = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const chart = useRef<Drawn<Shown> | null>(null);
  const [size, setSize] = useState<Size | null>(null);
  const { active, telling, spoken, point, onKeyDown, onBlur, onPointerLeave } = useMarks(tellings, onPick);
  const [themed, setThemed] = useState(0);
  useLayoutEffect(() => {
    const box = plot.current;
    const ground = canvas.current;
    if (box === null || ground === null) return;
    chart.current = createPlaneLater(ground);
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = box;
      setSize((before) => (before?.width === width && before.height === height ? before : { width, height }));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    measure();
    // Names are as wide as their letters, and those come late.
    void document.fonts.ready.then(() => setThemed((n) => n + 1));
    const stop = onTheme(() => setThemed((n) => n + 1));
    return () => {
      observer.disconnect();
      stop();
      chart.current?.destroy();
      chart.current = null;
    };
  }, []);
  const scene = useMemo(
    () => (size === null || size.width <= 0 ? null : spec.scene(size, measureIn(plot.current))),
    [spec.scene, size, themed],
  );
  useEffect(() => {
    if (scene !== null) chart.current?.show({ scene, active }, true);
  }, [scene, active]);

  const mark = active === null ? undefined : scene?.marks[active];
  const at = (event: MouseEvent) =>
    scene === null ? null : markAt(scene.marks, { x: event.offsetX, y: event.offsetY });

  return (
    <div class={dimmed ? "plane dim" : "plane"}>
      <p class="planeup" aria-hidden="true">
        {spec.up}
      </p>
      <div class="planey" aria-hidden="true">
        {scene !== null && <Ticks scale={scene.plane.y} say={spec.sayY} side="bottom" />}
      </div>
      <div
        ref={plot}
        class="planeplot"
        role="application"
        aria-roledescription={CHART}
        aria-label={withKeys(spec.label)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the one tab stop of the chart, moved in by arrow keys
        tabIndex={0}
        onKeyDown={onKeyDown}
        onBlur={onBlur}
        onPointerLeave={onPointerLeave}
        onPointerMove={(event) => point(at(event))}
        onClick={(event) => {
          const picked = at(event);
          if (onPick === undefined) point(picked);
          else if (picked !== null) onPick(picked);
        }}
      >
        <div aria-hidden="true" class="planeground">
          <canvas ref={canvas} />
          {scene?.texts.map((text) => (
            <OverText key={`${text.kind} ${text.text}`} text={text} />
          ))}
        </div>
        {telling !== null && mark !== undefined && size !== null && (
          <MarkTip telling={telling} mark={mark} size={size} />
        )}
        <p class="sr" aria-live="polite">
          {spoken}
        </p>
      </div>
      <div class="planex" aria-hidden="true">
        {scene !== null && <Ticks scale={scene.plane.x} say={spec.sayX} side="left" />}
      </div>
      <p class="planeacross" aria-hidden="true">
        {spec.across}
      </p>
    </div>
  );
}
