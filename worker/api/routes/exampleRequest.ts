import type * as z from "zod";
import type { AppraisalRequestSchema } from "../schemas/appraisalRequest.ts";

/** A request to start from: a touring bicycle of the 1980s, half looked over. Invented. */
export const exampleRequest = {
  currency: "EUR",
  find: {
    id: "green tourer behind the mill",
    category: "touring",
    year: 1984,
    frameMaterial: "steel",
    componentTier: "mid",
    sizeClass: "middle",
    kept: "sheltered",
    tyreMarking: "32-622",
    rearSprockets: 6,
    originality: 0.8,
    purchase: { price: 25, travelMinutes: 20 },
  },
  observations: {
    serial: { level: "clear" },
    ownership: { level: "document" },
    "frame-cracks": { level: "none" },
    "front-impact": { level: "none" },
    "seatpost-free": { level: "stiff" },
    "rear-alignment": { measured: { left: 41, right: 40 } },
    chain: { measured: { length24: 307.3 } },
    "tyre-condition": { front: { level: "good" }, rear: { level: "perished" } },
  },
  workshop: { hourlyGoal: 12, month: 4 },
} satisfies z.input<AppraisalRequestSchema>;
