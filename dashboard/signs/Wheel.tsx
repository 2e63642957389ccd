import type { Spoke } from "../checks/spokes.ts";
import { wheelSentence } from "../words/wheel.ts";

const INNER = 3.2;
const SHORT = 8.4;
const LONG = 14.2;

/** Twelve spokes for twelve groups of checks: long = looked at, short = partly, faint = not. It shows looking, never quality. */
export function Wheel({ spokes, size = 34 }: { spokes: readonly Spoke[]; size?: number }) {
  const open = spokes.filter(({ looked }) => looked === "not" || looked === "partly").length;
  const full = spokes.filter(({ looked }) => looked === "fully").length;
  const title = wheelSentence(full, spokes.length, open);
  return (
    <svg class="wheel" width={size} height={size} viewBox="-17 -17 34 34" role="img" aria-label={title}>
      <circle r="15.2" stroke-width={size > 60 ? 0.8 : 1.6} />
      <circle r="2.6" stroke-width={size > 60 ? 0.7 : 1.4} />
      {spokes.map((spoke, i) => (
        <SpokeLine
          key={spoke.name}
          spoke={spoke}
          angle={(i / spokes.length) * 2 * Math.PI}
          thin={size > 60}
        />
      ))}
    </svg>
  );
}

function SpokeLine({ spoke, angle, thin }: { spoke: Spoke; angle: number; thin: boolean }) {
  if (spoke.looked === "absent") return null;
  const end = spoke.looked === "partly" ? SHORT : LONG;
  const at = (radius: number) =>
    `${(radius * Math.sin(angle)).toFixed(2)} ${(-radius * Math.cos(angle)).toFixed(2)}`;
  const width = spoke.looked === "not" ? 1.1 : 1.5;
  return (
    <path
      class={spoke.looked === "not" ? "faint" : ""}
      d={`M${at(INNER)} L${at(end)}`}
      stroke-width={thin ? width / 2 : width}
    />
  );
}
