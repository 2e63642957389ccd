import * as z from "zod";
import type { Check } from "../../engine/inspection/check.ts";
import { conditions } from "./condition.ts";
import { id, minutes, share, words } from "./figures.ts";
import { measurement } from "./measurement.ts";

const safety = z.enum(["none", "advisory", "block", "owed"]);

const level = z.strictObject({
  id,
  label: words.exactOptional().describe("Words for the level where its id alone would mislead"),
  severity: z.literal([0, 1, 2, 3, 4]),
  safety,
  description: words,
  conditionPenalty: share.describe("Share of visible condition that the fault costs while it remains"),
  terminal: z.enum(["parts-or-recycle", "recycle", "decide-first", "stop"]).nullable(),
  terminalReason: words.exactOptional(),
  note: words.exactOptional(),
});

/** A check with everything a form needs to ask it. */
export const check = z.strictObject({
  id,
  name: words,
  group: id,
  spoke: words.describe("One of the wheel's twelve groups on screen"),
  where: z.enum(["spot", "bench", "dismantled"]),
  priority: z.enum(["triage", "core", "extra"]),
  minutes,
  tools: z.array(words),
  how: words,
  appliesTo: conditions,
  perWheel: z.boolean().describe("May be observed front and rear apart"),
  ordered: z.boolean().describe("Levels run from best to worst; false where they are kinds"),
  functional: z.boolean(),
  levels: z.array(level),
  adjustments: z.array(z.strictObject({ level: id, when: conditions, safety, note: words })),
  measurement: measurement.nullable(),
  neededFrom: z.array(
    z.strictObject({ sprocketsFrom: z.int(), sprocketsTo: z.int(), unknown: z.boolean(), level: id }),
  ),
  ifNotChecked: z.enum(["block", "advisory", "none"]),
  limitSource: z.strictObject({
    text: words,
    kind: z.enum(["standard", "law", "common practice"]),
    fromMemory: z.boolean(),
  }),
  note: words.exactOptional(),
}) satisfies z.ZodType<Check>;
