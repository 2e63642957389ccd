import type * as z from "zod";
import type { ComparisonSchemas } from "../schemas/comparisonRequest.ts";
import { exampleRequest } from "./exampleRequest.ts";

/** What stands up to a close look on all four. */
const sound = {
  serial: { level: "clear" },
  ownership: { level: "document" },
  recall: { level: "none" },
  "frame-cracks": { level: "none" },
  "frame-dents": { level: "none" },
  "front-impact": { level: "none" },
  "fork-alignment": { level: "true" },
  "bar-stem-cracks": { level: "none" },
  headset: { level: "smooth" },
  "hub-bearings": { level: "smooth" },
  "bb-bearing": { level: "smooth" },
  "rim-damage": { level: "none" },
  "spokes-broken": { level: "none" },
};

/** A request to start from: four bicycles in the shed, eight hours, 150 to spend, room for two. Invented. */
export const exampleComparison = {
  currency: "EUR",
  finds: [
    {
      find: { ...exampleRequest.find, componentTier: "upper", originality: 0.9 },
      observations: { ...sound, ...exampleRequest.observations },
    },
    {
      find: {
        id: "plum hybrid",
        category: "hybrid",
        era: "2010s",
        frameMaterial: "aluminium",
        componentTier: "mid",
        kept: "indoors",
        purchase: { price: 5 },
      },
      observations: {
        ...sound,
        "inner-cable": { level: "frayed" },
        "brake-function": { level: "weak" },
        "tyre-condition": { level: "good" },
      },
    },
    {
      find: {
        id: "barn mountain bike",
        category: "mountain-rigid",
        era: "1990s",
        frameMaterial: "steel",
        componentTier: "upper",
        kept: "sheltered",
        purchase: { price: 15 },
      },
      observations: {
        ...sound,
        "tyre-condition": { level: "perished" },
        "rim-lateral": { level: "out" },
        shifting: { level: "misadjusted" },
      },
    },
    {
      find: {
        id: "silver track bike",
        category: "track-single-speed",
        era: "1980s",
        frameMaterial: "steel",
        componentTier: "upper",
        kept: "sheltered",
        purchase: { price: 40 },
      },
      observations: { ...sound, "tyre-condition": { level: "perished" }, finish: { level: "faded" } },
    },
  ],
  workshop: { hourlyGoal: 12, month: 4 },
  budgets: { hours: 8, cash: 150, slots: 2 },
  objective: "netBenefit",
} satisfies z.input<ComparisonSchemas["documented"]>;
