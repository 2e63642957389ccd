import type { Appraisal } from "../api/types.ts";
import { counted } from "./count.ts";

/** What the three sheets are called. */
export const SHEETS = {
  inspection: "Inspection sheet",
  job: "Job sheet",
  shopping: "Shopping list",
} as const;
export type SheetId = keyof typeof SHEETS;

/** What each is for, in the chooser. */
export const SHEET_DETAILS: Readonly<Record<SheetId, string>> = {
  inspection: "every check that applies, to fill in by hand",
  job: "the work in order, with minutes, torque and proof",
  shopping: "what to buy, and the sizes to measure first",
};

/** Stands on each sheet that shows a figure of the demo data. */
export const INVENTED = "Prices, times and chances are invented demo data; no figure here is a market price.";
export const INVENTED_FIND = "Invented find.";
export const OWN_PRICES = "Prices marked \u201cyours\u201d are your own; the others are invented demo data.";
export const INVENTED_PRICES = "All prices are invented demo data; no figure here is a market price.";

export const SCREENS = "The checks screen the bike; they do not certify it.";
export const HOW_TO_FILL =
  "Tick one box a check, or write the figure down. What is not ticked was not looked at, and never counts as good. Stops: found so, it is not ridden, or not sold. The marking on a part comes before any figure here.";
export const F_AND_R = "F: front wheel. R: rear wheel.";

/** "58 checks, about 140 minutes; 12 made already, 9 owed before it is sold as rideable." */
export function sheetCount(checks: number, minutes: number, made: number, owed: number): string {
  const more = [
    made > 0 ? `${made} made already` : "",
    owed > 0 ? `${owed} owed before it is sold as rideable` : "",
  ].filter((part) => part !== "");
  return `${counted(checks, "check")}, about ${Math.round(minutes)} minutes${more.length === 0 ? "" : `; ${more.join(", ")}`}.`;
}

/** What stands between the bike and the road, as the head of a list to tick. */
export function beforeRiding({ blocking, owed }: Appraisal["readiness"], open: number): string {
  if (blocking.length > 0) return "As it stands nobody may ride it. Before anyone does:";
  if (owed.length > 0) return "No fault that stops riding was found, but these looks are still owed:";
  return open === 0
    ? "No fault that stops riding was found in the checks made; every check that applies was made."
    : `No fault that stops riding was found in the checks made; ${counted(open, "check")} not made.`;
}

export const FINAL_CHECK =
  "Final check: brakes, steering, wheels, tyres and every bolt, standing and rolling at walking pace";
