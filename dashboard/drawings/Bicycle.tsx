import type { AppraisalBody } from "../api/types.ts";

/** What of a description the drawing shows. */
export type Drawn = Pick<AppraisalBody["find"], "category" | "barType" | "stepThrough">;

const SMALL = ["folding", "small-wheel-shopper", "bmx", "childrens"];
const DROP = ["road-racing", "touring", "gravel-cross", "track-single-speed", "tandem"];

/** A line drawing of the kind of bicycle, for the eye alone. */
export function Bicycle({ find }: { find: Drawn }) {
  const small = SMALL.includes(find.category ?? "");
  const low = find.stepThrough === "yes" || find.category === "small-wheel-shopper";
  const drop = find.barType === undefined ? DROP.includes(find.category ?? "") : find.barType === "drop";
  const wheel = small ? 42 : 60;
  const axle = 186 - wheel;
  const tandem = find.category === "tandem";
  // A tandem is drawn longer: everything at the front stands this much further on.
  const on = tandem ? 72 : 0;
  return (
    <svg class="bicycle" viewBox={`0 0 ${340 + on} 196`} aria-hidden="true">
      <Rim x={74} y={axle} radius={wheel} />
      <Rim x={266 + on} y={axle} radius={wheel} />
      <path d={tandem ? TANDEM : frame(small, low, axle)} />
      <Rider x={0} />
      {tandem && <Rider x={on} />}
      <path
        transform={`translate(${on} 0)`}
        d={
          drop
            ? "M222 36 L244 32 C262 30 266 46 258 56 C253 62 244 62 240 60"
            : "M222 36 C214 30 202 30 188 36"
        }
      />
      <path stroke-width="1.2" d={`M153 117 L74 ${axle - 6} M153 149 L74 ${axle + 6}`} />
    </svg>
  );
}

/** What each rider has: post and saddle, chainring and crank. */
function Rider({ x }: { x: number }) {
  return (
    <g transform={`translate(${x} 0)`}>
      <path d="M128 56 L122 38 M104 36 C112 32 128 33 142 35 C136 40 120 41 104 36" />
      <circle cx="153" cy="132" r="17" />
      <path d="M153 132 L166 162 M158 164 h17" />
      <circle cx="153" cy="132" r="3" />
    </g>
  );
}

/** Main tubes, stays and fork: a diamond, or with the top tube lowered; small wheels take a longer post and stem. */
function frame(small: boolean, low: boolean, axle: number): string {
  const head = small ? 92 : 74;
  const top = small ? "M138 86 L231 78" : "M128 56 L226 50";
  return [
    `M74 ${axle} L133 70 M74 ${axle} L153 132`,
    `M222 36 L236 ${head} C242 ${head + 18} 250 ${axle - 14} 266 ${axle}`,
    `M128 56 L153 132 L236 ${head}`,
    low ? `M231 ${head - 12} C196 104 172 112 147 112` : top,
  ].join(" ");
}

const TANDEM =
  "M74 126 L133 70 M74 126 L153 132 M294 36 L308 74 C314 96 322 112 338 126 " +
  "M128 56 L153 132 H225 L308 74 M200 56 L225 132 M128 56 L298 50 M133 70 L225 132";

const SPOKES = 16;

function Rim({ x, y, radius }: { x: number; y: number; radius: number }) {
  const spokes = Array.from({ length: SPOKES }, (_, i) => {
    // Each spoke leaves the hub's edge a little turned, as laced spokes do.
    const hub = (i / SPOKES) * 2 * Math.PI + (i % 2 === 0 ? 0.9 : -0.9);
    const rim = (i / SPOKES) * 2 * Math.PI;
    return `M${point(x, y, 5, hub)} L${point(x, y, radius - 6, rim)}`;
  });
  return (
    <g>
      <circle cx={x} cy={y} r={radius} stroke-width="2.2" />
      <circle cx={x} cy={y} r={radius - 4.5} stroke-width="1" />
      <circle cx={x} cy={y} r="5" stroke-width="2.2" />
      <path d={spokes.join(" ")} stroke-width=".8" opacity=".75" />
    </g>
  );
}

function point(x: number, y: number, radius: number, angle: number): string {
  return `${(x + radius * Math.cos(angle)).toFixed(1)} ${(y + radius * Math.sin(angle)).toFixed(1)}`;
}
