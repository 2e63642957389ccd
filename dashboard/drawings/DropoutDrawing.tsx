import { bareLength, type LengthUnit } from "../words/length.ts";
import { dropoutTitle } from "../words/measured.ts";
import { LevelArrow } from "./Arrow.tsx";
import { dropoutScene } from "./dropouts.ts";

const MIDDLE = 180;
const HUB_Y = 148;

/** Dropouts from behind, and below them the hub on the same scale, their difference enlarged. */
export function DropoutDrawing(props: { spacing: number; hub: number; unit: LengthUnit }) {
  const { spacing, hub, unit } = props;
  const scene = dropoutScene(spacing, hub);
  const [left, right] = [MIDDLE - scene.halfSpacing, MIDDLE + scene.halfSpacing];
  const [hubLeft, hubRight] = [MIDDLE - scene.halfHub, MIDDLE + scene.halfHub];
  return (
    <svg class="live" viewBox="0 0 360 196" role="img" aria-label={dropoutTitle(scene, unit)}>
      <Dropout inner={left} out={-1} />
      <Dropout inner={right} out={1} />
      <LevelArrow y={84} from={left + 2} to={right - 2} />
      <text x={MIDDLE} y="74" text-anchor="middle">
        {bareLength(spacing, unit)}
      </text>
      <path class="mark" d={`M${left} 104 V182 M${right} 104 V182`} />
      <path class="thin" d={`M${hubLeft - 42} ${HUB_Y} H${hubRight + 42}`} />
      {([-1, 1] as const).map((side) => {
        const face = side < 0 ? hubLeft : hubRight;
        return (
          <g key={side}>
            <rect x={side < 0 ? face : face - 10} y={HUB_Y - 13} width="10" height="26" rx="2" />
            <path d={`M${face - side * 22} ${HUB_Y - 20} v40 M${face - side * 30} ${HUB_Y - 20} v40`} />
          </g>
        );
      })}
      <path
        d={`M${hubLeft + 30} ${HUB_Y - 8} H${hubRight - 30} M${hubLeft + 30} ${HUB_Y + 8} H${hubRight - 30}`}
      />
      <LevelArrow y={HUB_Y - 30} from={hubLeft + 1} to={hubRight - 1} />
      <text x={MIDDLE} y={HUB_Y + 40} text-anchor="middle">
        {bareLength(hub, unit)}
      </text>
    </svg>
  );
}

/** A stay and its dropout; `inner` is the face towards the hub. */
function Dropout({ inner, out }: { inner: number; out: -1 | 1 }) {
  const outer = inner + out * 12;
  return (
    <>
      <path
        d={`M${outer + out * 4} 8 C${outer + out * 2} 32 ${outer} 44 ${outer} 62 M${inner + out * 4} 8 C${inner + out * 2} 34 ${inner} 44 ${inner} 62`}
      />
      <rect x={Math.min(inner, outer)} y="62" width="12" height="40" rx="4" />
    </>
  );
}
