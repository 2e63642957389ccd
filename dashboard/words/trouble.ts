import type { Fault } from "../api/fault.ts";

/** What went wrong, in two or three words. */
export function troubleTitle(fault: Fault): string {
  if (fault.kind === "no-signal") return "No signal.";
  return fault.kind === "refused" ? "Not worked out." : "The service failed.";
}

/** What has become of what was entered, and what to do. */
export function troubleAdvice(fault: Fault): string {
  if (fault.kind === "no-signal")
    return "What you entered is kept; it is asked again once the connection is back.";
  if (fault.kind === "refused")
    return fault.fields.length > 0 ? "Change this, and it goes on:" : fault.detail;
  return "What you entered is kept. Wait a moment and try again.";
}
