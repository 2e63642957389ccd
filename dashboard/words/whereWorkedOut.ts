/** Which kind of device the pages run on, as a word for it. */
export type Device = "phone" | "tablet" | "computer";

/** The shorter side of a screen below which a device that is touched is called a phone, in CSS pixels. */
const PHONE_WIDEST = 600;

/** The device by how it is pointed at, and how large its screen is. */
export function deviceOf(touched: boolean, shorterSide: number): Device {
  if (!touched) return "computer";
  return shorterSide < PHONE_WIDEST ? "phone" : "tablet";
}

/**
 * Where the answers in sight were worked out.
 * @param here for each answer, whether it was in this browser
 */
export function whereWorkedOut(here: readonly boolean[], device: Device): string {
  const some = here.filter((one) => one).length;
  if (some === here.length) return `Worked out on this ${device}.`;
  if (some === 0) return "Worked out by the server.";
  return `Worked out partly on this ${device}, partly by the server, from the same prices and rules.`;
}

/** What stands by the goal while the server does not answer. */
export function noSignal(here: boolean, device: Device): string {
  return here ? `No signal. Worked out on this ${device}.` : "No signal.";
}

/** That a newer version can be had. */
export const NEWER = {
  pages: "A newer version is here. Your finds and prices stay; a form half filled in does not.",
  server:
    "The server now works with other prices or rules than this page. Your finds and prices stay; a form half filled in does not.",
  take: "Load it",
} as const;
