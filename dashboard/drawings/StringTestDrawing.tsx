import type { LengthUnit } from "../words/length.ts";
import { bareLength } from "../words/length.ts";
import { leftReading, rightReading, shownOffset, stringTitle } from "../words/measured.ts";
import { Arrow } from "./Arrow.tsx";
import { FRAME, type StringReading, stringScene } from "./stringTest.ts";

const { headX, middleY, halfSpacing, headString, dropoutString } = FRAME;
const STAY_X = 357;
const DROPOUT = { x: 356, width: 28, height: 12 };
const STRING_X = 374;

/** The string test from above: the rear end bends as the readings say, enlarged; dashed is straight. */
export function StringTestDrawing({ reading, unit }: { reading: StringReading; unit: LengthUnit }) {
  const scene = stringScene(reading);
  const { shift, seatTubeX: seat, leftStringY, rightStringY, offset } = scene;
  const stringEnd = (side: -1 | 1) => middleY + shift + side * (halfSpacing + dropoutString);
  const head = (side: -1 | 1) => middleY + side * headString;
  return (
    <svg class="live" viewBox="8 26 466 192" role="img" aria-label={stringTitle(scene, unit)}>
      <path d={`M14 ${middleY} H470`} class="axis" />
      {shift !== 0 && <RearEnd seat={seat} shift={0} ghost />}
      <RearEnd seat={seat} shift={shift} />
      <circle cx={headX} cy={middleY} r="12" />
      <path d={`M60 ${middleY - 7} H${seat - 11} M60 ${middleY + 7} H${seat - 11}`} />
      <circle cx={seat} cy={middleY} r="12" />
      <circle cx={seat} cy={middleY} r="7" class="thin" />
      <path
        class="string"
        d={`M${STRING_X} ${stringEnd(-1)} L${headX} ${head(-1)} A${headString} ${headString} 0 0 0 ${headX} ${head(1)} L${STRING_X} ${stringEnd(1)}`}
      />
      <Arrow x={seat} from={leftStringY} to={middleY - 13} />
      <Arrow x={seat} from={middleY + 13} to={rightStringY} />
      <text x={seat} y={Math.min(leftStringY, middleY - 22) - 9} text-anchor="middle">
        {leftReading(reading.left, unit)}
      </text>
      <text x={seat} y={Math.max(rightStringY, middleY + 22) + 22} text-anchor="middle">
        {rightReading(reading.right, unit)}
      </text>
      {shift !== 0 && (
        <>
          <path d={`M388 ${middleY + shift} H418`} class="mark" />
          <Arrow x={408} from={middleY} to={middleY + shift} />
        </>
      )}
      <text x="422" y={middleY + shift / 2 + 8} class="big">
        {bareLength(shownOffset(offset, unit), unit)}
      </text>
    </svg>
  );
}

/** Stays and dropouts, their middle off the frame's plane by so much of the drawing. */
function RearEnd({ seat, shift, ghost = false }: { seat: number; shift: number; ghost?: boolean }) {
  return (
    <g class={ghost ? "ghost" : ""}>
      {([-1, 1] as const).map((side) => {
        const dropout = middleY + shift + side * halfSpacing;
        return (
          <g key={side}>
            <path d={stay(seat + 9, middleY + side * 9, dropout + side * 3.5)} />
            <path d={stay(seat + 12, middleY + side * 2, dropout - side * 3.5)} />
            <rect
              x={DROPOUT.x}
              y={dropout - DROPOUT.height / 2}
              width={DROPOUT.width}
              height={DROPOUT.height}
              rx="2.5"
            />
          </g>
        );
      })}
    </g>
  );
}

/** One edge of a stay: from the seat tube in an S to its dropout. */
function stay(x: number, from: number, to: number): string {
  const reach = STAY_X - x;
  const at = (share: number) => (x + reach * share).toFixed(1);
  return `M${x} ${from} C${at(0.35)} ${(from + (to - from) * 0.35).toFixed(1)} ${at(0.62)} ${to} ${STAY_X} ${to}`;
}
