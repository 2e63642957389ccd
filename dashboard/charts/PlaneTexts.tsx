import type { Telling } from "./place.ts";
import type { Box, PlaneText, Size } from "./plane.ts";
import { percent, type Scale } from "./scale.ts";

/** Figures along an axis. */
export function Ticks({
  scale,
  say,
  side,
}: {
  scale: Scale;
  say: (value: number) => string;
  side: "left" | "bottom";
}) {
  return (
    <>
      {scale.ticks.map((tick) => (
        <span key={tick} style={{ [side]: `${percent(tick, scale)}%` }}>
          {say(tick)}
        </span>
      ))}
    </>
  );
}

/** A text over the plot. */
export function OverText({ text: { text, x, y, align, kind } }: { text: PlaneText }) {
  const turned = kind === "flag" && align === "right";
  return (
    <span
      class={`planetext ${kind} ${turned ? "turned " : ""}${align}`}
      style={{ left: `${x}px`, top: `${y}px` }}
    >
      {text}
    </span>
  );
}

/** What is told about a mark, beside it on the side that has room. */
export function MarkTip({ telling, mark, size }: { telling: Omit<Telling, "at">; mark: Box; size: Size }) {
  const upright =
    mark.top > size.height * 0.55
      ? { bottom: `${size.height - Math.max(mark.top, 8) + 4}px` }
      : { top: `${Math.min(mark.bottom + 4, size.height * 0.6)}px` };
  const across =
    (mark.left + mark.right) / 2 > size.width / 2
      ? { right: `${Math.max(0, size.width - mark.right)}px` }
      : { left: `${Math.max(0, mark.left)}px` };
  return (
    <div class="tip" aria-hidden="true" style={{ ...upright, ...across }}>
      <b>{telling.title}</b>
      {telling.lines.map((line) => (
        <span key={line}>{line}</span>
      ))}
    </div>
  );
}
