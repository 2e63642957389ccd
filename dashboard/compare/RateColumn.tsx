import { percent, type Scale } from "../charts/scale.ts";
import type { FindRow } from "../finds/row.ts";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { HATCH } from "./CellBar.tsx";

/** Where the bar stands in its column and how wide it is, in pixels. */
const AT = 44;
const HALF = 13;

interface RateColumnProps {
  /** Null draws the ground alone. */
  readonly row: FindRow | null;
  readonly scale: Scale;
  readonly goal: number;
  /** In pixels. */
  readonly height: number;
  readonly active: boolean;
  readonly onPoint: () => void;
  readonly onPick: () => void;
}

/** One upright bar over the ground that all columns share. */
export function RateColumn({ row, scale, goal, height, active, onPoint, onPick }: RateColumnProps) {
  const y = (value: number) =>
    height * (1 - percent(Math.min(scale.max, Math.max(scale.min, value)), scale) / 100);
  return (
    <svg class="ratecol" height={height} aria-hidden="true" onPointerMove={onPoint} onClick={onPick}>
      {scale.min < 0 && (
        <rect class="lossground" x="0" width="100%" y={y(0)} height={Math.max(0, height - y(0))} />
      )}
      {scale.ticks.map((tick) => (
        <line key={tick} class={tick === 0 ? "zero" : "grid"} x1="0" x2="100%" y1={y(tick)} y2={y(tick)} />
      ))}
      {active && <rect class="active" x="2" y="2" width="97%" height={height - 4} rx="6" />}
      {row !== null && <Bar row={row} goal={goal} scale={scale} y={y} />}
      <line class="goalline" x1="0" x2="100%" y1={y(goal)} y2={y(goal)} />
      {row !== null && (
        <g
          style={{ color: `var(${COURSE_TOKEN[row.verdict]})` }}
          transform={`translate(${AT} ${y(row.rate)})`}
        >
          <path class="halo" d={COURSE_PATH[row.verdict]} />
          <path d={COURSE_PATH[row.verdict]} fill="currentColor" />
        </g>
      )}
    </svg>
  );
}

function Bar(props: { row: FindRow; goal: number; scale: Scale; y: (value: number) => number }) {
  const { row, goal, scale, y } = props;
  const { p10, p90, hardlyLooked, verdict } = row;
  const box = (from: number, to: number) => ({
    x: AT - HALF,
    width: 2 * HALF,
    y: y(to),
    height: Math.max(0, y(from) - y(to)),
    rx: 4,
  });
  return (
    <g class={hardlyLooked ? "open" : ""} style={{ color: `var(${COURSE_TOKEN[verdict]})` }}>
      <rect class="band" {...box(p10, Math.max(p90, p10))} />
      {!hardlyLooked && p90 > goal && <rect class="strong" {...box(Math.max(goal, p10), p90)} />}
      {p10 < 0 && <rect fill={`url(#${HATCH})`} {...box(p10, Math.min(0, p90))} />}
      <rect class="outline" {...box(p10, p90)} />
      {p90 > scale.max && <path class="arrow" d={arrow(y(p90) + 2, 1)} />}
      {p10 < scale.min && <path class="arrow" d={arrow(y(p10) - 2, -1)} />}
    </g>
  );
}

/** The head of a bar that runs out of the axis, upwards or downwards. */
function arrow(tip: number, way: 1 | -1): string {
  return `M${AT - 16} ${tip + way * 7} L${AT} ${tip} L${AT + 16} ${tip + way * 7}`;
}
