import type { ComponentChildren } from "preact";
import { percent, type Scale } from "./scale.ts";

/** The figures under the rows of a chart. Those too near the goal's own figure are left to it. */
export function Axis({ scale, say }: { scale: Scale; say: (value: number) => string }) {
  return (
    <div class="axis" aria-hidden="true">
      {scale.ticks.map((tick) => {
        const at = percent(tick, scale);
        return (
          <span key={tick} class={edgeOf(at)} style={{ left: `${at}%` }}>
            {say(tick)}
          </span>
        );
      })}
    </div>
  );
}

/** Class of a figure that would reach over an end of its axis, by its place in per cent. */
export function edgeOf(at: number): "start" | "end" | "" {
  return at < 4 ? "start" : at > 96 ? "end" : "";
}

/** The flag that stands at the goal; turned to the left where the right has no room. */
export function GoalFlag({ at, children }: { at: number; children: ComponentChildren }) {
  return (
    <span class={at > 58 ? "flag turned" : "flag"} style={{ left: `${at}%` }}>
      {children}
    </span>
  );
}
