import type { Reference } from "../api/types.ts";
import { Wheel } from "../signs/Wheel.tsx";
import {
  CHART_KEY_DASHED,
  CHART_KEY_FULL,
  CHART_KEY_HATCHED,
  CHART_KEY_SPOKE,
} from "../words/marginChart.ts";

/** What the chart's signs mean. */
export function ChartKey({ reference }: { reference: Reference }) {
  const sample = [...new Set(reference.checks.map(({ spoke }) => spoke))].map((name, i) => ({
    name,
    made: 0,
    applicable: 0,
    looked: (["fully", "fully", "partly", "not"] as const)[i % 4] ?? "not",
  }));
  return (
    <div class="key">
      <span>
        <svg width="54" height="16" aria-hidden="true" class="keybar">
          <rect class="pale" x="1" y="2" width="52" height="12" rx="3" />
          <rect class="full" x="26" y="2" width="27" height="12" rx="3" />
        </svg>
        {CHART_KEY_FULL}
      </span>
      <span>
        <svg width="40" height="16" aria-hidden="true" class="keybar">
          <rect class="open" x="1" y="2" width="38" height="12" rx="3" />
        </svg>
        {CHART_KEY_DASHED}
      </span>
      <span>
        <svg width="40" height="16" aria-hidden="true" class="keybar">
          <rect class="pale" x="1" y="2" width="38" height="12" rx="3" />
          <path d="M4 14 L14 3 M11 14 L21 3 M18 14 L28 3 M25 14 L35 3" class="hatching" />
        </svg>
        {CHART_KEY_HATCHED}
      </span>
      <span>
        <span aria-hidden="true">
          <Wheel spokes={sample} size={30} />
        </span>
        {CHART_KEY_SPOKE}
      </span>
    </div>
  );
}
