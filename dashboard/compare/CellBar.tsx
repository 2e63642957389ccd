import { percent, type Scale } from "../charts/scale.ts";
import type { Cell, Measure } from "./measures.ts";

/** Id of the hatching that every drawing of the page refers to. */
export const HATCH = "compare-hatch";

/** The hatching of what loses money. Stands once on the page. */
export function HatchPattern() {
  return (
    <svg width="0" height="0" class="sr" aria-hidden="true">
      <pattern
        id={HATCH}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
        class="hatchline"
      >
        <rect width="2" height="6" />
      </pattern>
    </svg>
  );
}

interface CellBarProps {
  readonly cell: Cell;
  readonly drawn: Measure["drawn"];
  readonly scale: Scale;
  /** Fewer than half of the checks made. */
  readonly open: boolean;
}

/** The small drawing of one figure; its words stand below it. */
export function CellBar({ cell, drawn, scale, open }: CellBarProps) {
  if (cell.value === null || drawn === "words") return null;
  if (drawn === "tenths") return <Tenths share={cell.value} />;
  return (
    <svg class={open ? "cellbar open" : "cellbar"} height="18" aria-hidden="true">
      {drawn === "length" ? (
        <Length value={cell.value} scale={scale} />
      ) : (
        <Range cell={cell} value={cell.value} scale={scale} />
      )}
    </svg>
  );
}

function Range({ cell: { low, high }, value, scale }: { cell: Cell; value: number; scale: Scale }) {
  const at = (x: number) => Math.min(100, Math.max(0, percent(x, scale)));
  const width = (from: number, to: number) => `${Math.max(0, at(to) - at(from))}%`;
  const nought = `${at(0)}%`;
  return (
    <>
      <rect class="lossground" x="0" y="0" width={nought} height="18" />
      <line class="zero" x1={nought} x2={nought} y1="0" y2="18" />
      <rect class="band" x={`${at(low)}%`} y="4" width={width(low, high)} height="10" rx="2" />
      {low < 0 && (
        <rect
          x={`${at(low)}%`}
          y="4"
          width={width(low, Math.min(0, high))}
          height="10"
          rx="2"
          fill={`url(#${HATCH})`}
        />
      )}
      {low < scale.min && <Arrow at={0} turn={180} />}
      {high > scale.max && <Arrow at={100} turn={0} />}
      <line class="mark" x1={`${at(value)}%`} x2={`${at(value)}%`} y1="1" y2="17" />
    </>
  );
}

/** The head of a bar that runs out of the axis. */
function Arrow({ at, turn }: { at: 0 | 100; turn: 0 | 180 }) {
  return (
    <svg x={`${at}%`} y="9" overflow="visible" aria-hidden="true">
      <path class="arrow" d="M-7 -8 L-1 0 L-7 8" transform={`rotate(${turn})`} />
    </svg>
  );
}

function Length({ value, scale }: { value: number; scale: Scale }) {
  const from = percent(0, scale);
  return (
    <rect class="amount" x={`${from}%`} y="4" width={`${percent(value, scale) - from}%`} height="10" rx="2" />
  );
}

const TEN = Array.from({ length: 10 }, (_, i) => i);

/** Ten boxes, one for each outcome in ten. */
function Tenths({ share }: { share: number }) {
  const filled = Math.round(share * 10);
  return (
    <svg class="tenths" width="120" height="14" viewBox="0 0 120 14" aria-hidden="true">
      {TEN.map((i) => (
        <rect key={i} class={i < filled ? "full" : ""} x={1 + 12 * i} y="2" width="9" height="10" rx="1.5" />
      ))}
    </svg>
  );
}
