import type { ComponentChildren } from "preact";

/** A block that says stop (a hard caution) or mind (a soft one), by sign, colour and words. */
export function Warning({ kind, children }: { kind: "stop" | "mind"; children: ComponentChildren }) {
  return (
    <div class={kind === "stop" ? "warning stop" : "warning mind"}>
      {kind === "stop" ? <StopSign /> : <MindSign />}
      <div>{children}</div>
    </div>
  );
}

function StopSign() {
  return (
    <svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
      <path d="M8.2 1.5h9.6l6.7 6.7v9.6l-6.7 6.7H8.2L1.5 17.8V8.2z" fill="var(--stop)" />
      <path d="M8 13h10" stroke="var(--on-stop)" stroke-width="3.2" stroke-linecap="round" />
    </svg>
  );
}

function MindSign() {
  return (
    <svg
      width="26"
      height="26"
      viewBox="0 0 26 26"
      fill="none"
      stroke="var(--mind)"
      stroke-width="2.2"
      stroke-linejoin="round"
      stroke-linecap="round"
      aria-hidden="true"
    >
      <path d="M13 3 L24 22.5 H2 Z" />
      <path d="M13 10v5.5" />
      <circle cx="13" cy="18.9" r=".8" fill="var(--mind)" />
    </svg>
  );
}
