import type { SaleGround } from "../selling/road.ts";
import { counted, listed } from "./count.ts";

/** What the advert must say of riding, or what its price counts on; null where nothing stands in the way. */
export function roadWords({
  road,
  stops,
  owed,
}: Extract<SaleGround, { kind: "open" }>): { readonly said: string; readonly because: string } | null {
  if (road === "frame-withdrawn")
    return { said: "The frame is not sold.", because: `Say so in the title. Because of: ${listed(stops)}.` };
  if (road === "not-roadworthy") {
    const faults = stops.length === 0 ? "" : ` Stops riding: ${listed(stops)}.`;
    return { said: "Not roadworthy: say so in the title.", because: `${faults}${owedWords(owed)}`.trim() };
  }
  if (owed.length === 0) return null;
  return {
    said: "This price counts on checks that are still to be made.",
    because: `Until they are made, the advert says that it is not roadworthy.${owedWords(owed)}`,
  };
}

/** More checks than this are counted only. */
const MOST_NAMED = 4;

function owedWords(owed: readonly string[]): string {
  if (owed.length === 0) return "";
  const named = owed.length > MOST_NAMED ? "" : `: ${listed(owed)}`;
  return ` Still to be looked at: ${counted(owed.length, "check")}${named}.`;
}
