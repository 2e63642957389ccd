import type { Attributes } from "../../../worker/engine/bicycle.ts";

/** What may raise a caution, gathered from an answer alone. */
export interface Evidence {
  readonly attributes: Attributes;
  readonly skill: number;
  /** Levels found, "check:level". */
  readonly found: ReadonlySet<string>;
  /** Checks that apply and were not made. */
  readonly unmade: ReadonlySet<string>;
  /** Whether any finding blocks riding. */
  readonly blocked: boolean;
  /** Courses that are open. */
  readonly open: ReadonlySet<string>;
  /** Operations in the plan of any open course, with the skill that each asks for. */
  readonly work: ReadonlySet<string>;
  /** Parts, doses and services bought in any of these plans. */
  readonly bought: ReadonlySet<string>;
  /** Safety-critical work that the user does without the skill for it. */
  readonly outOfDepth: boolean;
}

/** Whether the trigger holds: hard, soft or not at all. Written from the words of the cautions, beside the tables' own clauses. */
type Trigger = (evidence: Evidence) => "hard" | "soft" | null;

const at = (check: string, ...levels: string[]) => levels.map((level) => `${check}:${level}`);
const found =
  (...levels: string[]) =>
  ({ found: seen }: Evidence) =>
    levels.some((level) => seen.has(level));
const doing =
  (...ids: string[]) =>
  ({ work }: Evidence) =>
    ids.some((id) => work.has(id));
const hard =
  (holds: (evidence: Evidence) => boolean): Trigger =>
  (evidence) =>
    holds(evidence) ? "hard" : null;
const soft =
  (holds: (evidence: Evidence) => boolean): Trigger =>
  (evidence) =>
    holds(evidence) ? "soft" : null;
const first =
  (...triggers: Trigger[]): Trigger =>
  (evidence) =>
    triggers.map((one) => one(evidence)).find(Boolean) ?? null;
const rideable = ({ open }: Evidence) => open.has("restore") || open.has("make-safe");

const BRAKE_FAULTS = [
  ...at("brake-function", "weak", "one-fails", "none"),
  ...at("brake-pads", "worn"),
  ...at("inner-cable", "frayed", "broken"),
  ...at("housing", "split"),
  ...at("caliper", "seized", "damaged"),
  ...at("brake-lever", "loose", "broken"),
  ...at("rotor", "worn"),
  ...at("hydraulic", "spongy", "leak", "stuck"),
  ...at("hub-brake", "weak", "none"),
];
const BRAKE_WORK =
  /^(new-pads|new-brake-cables|(overhaul|replace)-calipers|replace-brake-levers|tighten-lever|bleed|replace-hydraulic|replace-rotor|service-hub-brake|new-rod-shoes)$/;
const STEM_BAR_POST_BRAKE_CRANK =
  /^(free-stem|replace-(stem|bar|fork|suspension-fork|headset|seatpost|crank|calipers|brake-levers|hydraulic)|regrease-headset|adjust-headset|grease-post|free-seatpost|tighten-(cranks|lever)|service-bb|new-bb|new-pedals|service-pedals|overhaul-calipers)$/;
/** Work that grinds, burns or covers paint. */
const ON_PAINT = doing("polish", "touch-up", "rust-surface", "decide-crack", "repaint-spray", "powder-coat");
const OLD_PAINT = ({ attributes, found: seen }: Evidence) =>
  ["pre-1970", "1970s"].includes(attributes.era) ||
  seen.has("finish:repainted-fair") ||
  seen.has("finish:repainted-poor");

/** By id of the caution. */
export const TRIGGERS: Readonly<Record<string, Trigger>> = {
  "crack-frame": hard(found(...at("frame-cracks", "paint-line", "crack-attachment", "crack-structural"))),
  "crack-fork-bar-stem": hard(
    found(
      ...at("fork-alignment", "bent", "creased"),
      ...at("fork-steerer", "bulged", "cracked"),
      ...at("bar-stem-cracks", "bent", "cracked"),
    ),
  ),
  "impact-ripple": hard(found(...at("front-impact", "suspect", "clear"))),
  "bar-hidden": soft(
    ({ attributes, unmade, found: seen }) =>
      attributes.barMaterial === "aluminium" &&
      (unmade.has("bar-corrosion") || seen.has("bar-corrosion:powder")),
  ),
  "bar-corroded": hard(found(...at("bar-corrosion", "pitted", "holed"))),
  carbon: hard(found(...at("carbon-damage", "suspect", "broken"))),
  brakes: first(
    hard(found(...BRAKE_FAULTS)),
    soft(({ work }) => [...work].some((id) => BRAKE_WORK.test(id))),
  ),
  "hydraulic-fluid": soft(
    ({ attributes, work }) => attributes.brakeType === "disc-hydraulic" && work.has("bleed"),
  ),
  steering: hard(found(...at("headset", "loose", "seized"), "stem-insertion:short", "brake-lever:loose")),
  "min-insert": hard(found("seatpost-insertion:short", "stem-insertion:short")),
  "rim-worn": first(hard(found("rim-sidewall:worn-out")), soft(found("rim-sidewall:near-limit"))),
  "rim-crack": hard(found(...at("rim-damage", "big-dent", "cracked"), ...at("rim-lateral", "bad", "folded"))),
  "tyres-old": first(
    hard(found("tyre-age:old", "tyre-condition:perished")),
    soft(found(...at("tyre-condition", "fine-cracks", "worn"))),
  ),
  tubular: hard(found("tyre-size:tubular")),
  // The tables forbid both on other materials, so it is never more than soft.
  "cold-set": soft(doing("cold-set", "align-fork")),
  "seized-parts": soft(found(...at("seatpost-free", "stuck", "stuck-cut"), "stem-free:stuck")),
  "saw-post": soft(doing("cut-out-seatpost")),
  chemicals: soft(({ bought }) =>
    ["rust-remover", "degreaser", "alcohol", "penetrant-dye", "rim-glue"].some((part) => bought.has(part)),
  ),
  "acid-chain": soft(doing("rust-surface")),
  "lead-paint": hard((evidence) => OLD_PAINT(evidence) && ON_PAINT(evidence)),
  spray: hard(doing("repaint-spray")),
  eyes: soft(
    doing(
      "replace-spokes",
      "rebuild-wheel",
      "suspension-service",
      "cut-out-seatpost",
      "new-cotters",
      "replace-headset",
      "replace-cart-bearing",
    ),
  ),
  "freewheel-strip": soft(doing("new-sprockets")),
  suspension: soft(doing("suspension-service")),
  lift: soft(({ attributes }) => attributes.category === "cargo" || attributes.category === "tandem"),
  torque: soft(
    (evidence) =>
      [...evidence.work].some((id) => STEM_BAR_POST_BRAKE_CRANK.test(id)) ||
      (evidence.attributes.hasCarbon === "yes" && rideable(evidence)),
  ),
  "test-ride": soft(rideable),
  "two-eyes": hard(({ outOfDepth }) => outOfDepth),
  serial: first(
    hard(found("serial:removed", "serial:reported")),
    soft(
      ({ found: seen, unmade }) =>
        seen.has("serial:not-queried") || seen.has("serial:illegible") || unmade.has("serial"),
    ),
  ),
  title: hard(found("ownership:none", "ownership:contradictory")),
  "seller-duty": soft(({ open }) => [...open].some((course) => course !== "leave")),
  "for-parts-label": hard(({ open, blocked }) => open.has("sell-as-found") && blocked),
  recall: hard(found("recall:open")),
  lights: soft(found("equipment:partial", "equipment:none")),
  "brakes-two": first(
    hard(found("brake-function:none")),
    soft(
      ({ attributes, found: seen }) =>
        seen.has("brake-function:one-fails") ||
        attributes.category === "track-single-speed" ||
        attributes.fixedGear === "yes",
    ),
  ),
  "e-bike": hard(({ attributes }) => attributes.category === "e-bike-out-of-scope"),
  children: soft(({ attributes }) => attributes.category === "childrens"),
  "child-seat": soft(({ bought }) => bought.has("rack")),
  waste: soft(doing("dispose")),
  "photo-privacy": soft(doing("photograph", "strip-for-parts")),
};
