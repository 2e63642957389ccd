import type { Check, Threshold } from "../api/types.ts";
import type { LengthUnit } from "../words/length.ts";
import { amount } from "../words/length.ts";
import { bandWords } from "../words/measured.ts";
import { levelWords } from "../words/plain.ts";
import { bandsOf, placeOn } from "./gauge.ts";

interface GaugeProps {
  readonly check: Pick<Check, "levels" | "name">;
  readonly limits: readonly Threshold[];
  /** Held against the limits; undefined before anything was measured. */
  readonly value: number | undefined;
  readonly readingError: number;
  readonly unit: string;
  readonly lengths: LengthUnit;
}

/** A scale of levels with a mark at the reading, and its reading error about it. Each level takes the same width. */
export function Gauge({ check, limits, value, readingError, unit, lengths }: GaugeProps) {
  const bands = bandsOf(limits);
  const place = (at: number) => `${(100 * placeOn(bands, at)).toFixed(2)}%`;
  return (
    <div class="gauge">
      <div class="scale" aria-hidden="true">
        {value !== undefined && (
          <>
            <span
              class="error"
              style={{
                left: place(value - readingError),
                right: `calc(100% - ${place(value + readingError)})`,
              }}
            />
            <span class="reading" style={{ left: place(value) }}>
              <b class={placeOn(bands, value) > 0.7 ? "before" : ""}>{amount(value, unit, lengths)}</b>
            </span>
          </>
        )}
      </div>
      <ol class="bands" style={{ gridTemplateColumns: `repeat(${bands.length}, 1fr)` }}>
        {bands.map(({ level, from, below }) => (
          <li key={level}>
            <b>{levelWords(check, level)}</b>
            <span>{bandWords(from, below, unit, lengths)}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}
