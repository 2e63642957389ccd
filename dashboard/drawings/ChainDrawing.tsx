import type { LengthUnit } from "../words/length.ts";
import { chainTitle, pitchesWords, whenNewWords } from "../words/measured.ts";
import { LevelArrow } from "./Arrow.tsx";
import { type ChainReading, elongation, glassOver, lengthAt, underGlass } from "./chainRuler.ts";

const FIRST_X = 24;
const LAST_X = 336;
const CHAIN_Y = 46;
const GLASS = { x: 14, y: 86, width: 332, height: 96 };
/** Room between the glass's edge and the ends of its scale. */
const INSET = 16;

interface ChainDrawingProps {
  readonly reading: ChainReading;
  /** Elongations at which the level changes, %. */
  readonly limits: readonly number[];
  /** The one from which a new chain is needed on this bike; null where none is. */
  readonly needed: number | null;
  readonly unit: LengthUnit;
}

/** A chain over a ruler, and under a glass the end of it: the last pin moves against where it stood when new. */
export function ChainDrawing({ reading, limits, needed, unit }: ChainDrawingProps) {
  const percent = elongation(reading);
  const glass = glassOver(limits, reading);
  const place = (mm: number) => GLASS.x + INSET + (GLASS.width - 2 * INSET) * underGlass(mm, glass);
  const whenNew = lengthAt(0, reading);
  const rule = GLASS.y + 50;
  const pin = place(reading.length);
  const ticks = Array.from({ length: glass.to - glass.from + 1 }, (_, i) => glass.from + i);
  return (
    <svg
      class="live"
      viewBox="0 0 360 200"
      role="img"
      aria-label={chainTitle(reading.length, reading.pitches, percent, unit)}
    >
      <LevelArrow y={20} from={FIRST_X} to={LAST_X} />
      <text x="180" y="15" text-anchor="middle" class="note">
        {pitchesWords(reading.pitches)}
      </text>
      <Links pitches={reading.pitches} />
      <path class="thin" d={`M${LAST_X} ${CHAIN_Y + 8} L${GLASS.x + GLASS.width - 30} ${GLASS.y}`} />
      <rect {...GLASS} rx="8" class="glass" />
      <path class="thin" d={`M${GLASS.x} ${rule} H${GLASS.x + GLASS.width}`} />
      {ticks.map((mm) => (
        <path key={mm} class="thin" d={`M${place(mm)} ${rule} v8`} />
      ))}
      {limits.map((limit) => (
        <path
          key={limit}
          class={limit === needed ? "mark needed" : "mark"}
          d={`M${place(lengthAt(limit, reading))} ${rule} V${GLASS.y + 8}`}
        />
      ))}
      <path class="thin" d={`M${place(whenNew)} ${rule + 14} V${GLASS.y + 24}`} />
      <text x={place(whenNew)} y={rule + 30} text-anchor="middle" class="note">
        {whenNewWords(whenNew, unit)}
      </text>
      {needed !== null && (
        <text x={place(lengthAt(needed, reading))} y={rule + 30} text-anchor="middle" class="note">
          {needed} %
        </text>
      )}
      <g class="pin">
        <path d={`M${pin} ${GLASS.y + 22} V${rule}`} />
        <circle cx={pin} cy={GLASS.y + 22} r="6" />
      </g>
    </svg>
  );
}

/** Inner and outer links in turn, a pin at each pitch. */
function Links({ pitches }: { pitches: number }) {
  const pitch = (LAST_X - FIRST_X) / pitches;
  const pins = Array.from({ length: pitches + 1 }, (_, i) => FIRST_X + i * pitch);
  return (
    <g>
      {pins
        .slice(0, -1)
        .map((x, i) =>
          i % 2 === 0 ? (
            <rect key={x} class="thin" x={x - 4.5} y={CHAIN_Y - 5.5} width={pitch + 9} height="11" rx="5.5" />
          ) : (
            <path
              key={x}
              class="thin"
              d={`M${x + 4.5} ${CHAIN_Y - 3.5} h${pitch - 9} M${x + 4.5} ${CHAIN_Y + 3.5} h${pitch - 9}`}
            />
          ),
        )}
      {pins.map((x) => (
        <circle key={x} class="dot" cx={x} cy={CHAIN_Y} r={x === pins.at(-1) ? 3.4 : 1.7} />
      ))}
    </g>
  );
}
