import type { PlannedOperation, ReportedPlan } from "../api/types.ts";
import { listed, uncapital } from "./count.ts";
import { figure } from "./figure.ts";
import { money, roundMoney, roundTo } from "./money.ts";
import { partAmount } from "./partAmount.ts";
import { between } from "./range.ts";
import { minutes } from "./time.ts";

/** "2 × inner tube", "brake cable housing (1.5 m)". */
function amountWords(name: string, quantity: number, unit: string): string {
  const amount = partAmount(quantity, unit);
  return unit === "each" ? `${amount} \u00d7 ${uncapital(name)}` : `${uncapital(name)} (${amount})`;
}

/** "40 to 50 N m, crank bolts; a marked value rules". */
function torqueWords({ from, to, of }: NonNullable<PlannedOperation["torque"]>): string {
  return `${between(figure(from, 1), figure(to, 1))} N m, ${of}; a marked value rules`;
}

/** "Fit new tyres (front)". */
export function jobName({ name, position }: Pick<PlannedOperation, "name" | "position">): string {
  return position === "front" || position === "rear" ? `${name} (${position})` : name;
}

/** What to know of a job beside its name: "your choice", "outside service". */
export function jobTags({ kind, assumed, doneBy, redecide }: PlannedOperation): readonly string[] {
  return [
    kind === "optional" ? "your choice" : "",
    assumed ? "likelier than not" : "",
    doneBy === "self" ? "" : doneBy === "mechanic" ? "have it done or checked" : "outside service",
    redecide ? "decide again here" : "",
  ].filter((tag) => tag !== "");
}

/**
 * Why a job is in the plan, what it uses, its torque, and the check that proves it done, each with its name; what says
 * nothing is left out.
 * @param nameOf name of a check
 */
export function jobFacts(
  { because, assumed, parts, torque, proof }: PlannedOperation,
  nameOf: (check: string) => string,
): readonly (readonly [name: string, text: string])[] {
  const what = listed(because.map(nameOf));
  const facts: readonly (readonly [string, string])[] = [
    ["Because of", what !== "" && assumed ? `${what}: not looked at, but likelier than not` : what],
    ["Uses", listed(parts.map(({ name, quantity, unit }) => amountWords(name, quantity, unit)))],
    ["Torque", torque === null ? "" : torqueWords(torque)],
    ["Proof", proof],
  ];
  return facts.filter(([, text]) => text !== "");
}

/** Head of what follows a job, and what it is. */
export const THEN = "Then";
export const DECIDE_AGAIN = "you can still change course after this";
export const LEFT_AS_THEY_ARE = "Left as they are and told to the buyer:";

/**
 * "Set aside for what nobody has seen yet and for work that may fail: 30 min and €12, on average." Either may come out below
 * nought, since a discovery can spare work or parts: then nothing of it is set aside. Null where neither is.
 * @param currency ISO 4217
 */
export function setAside(allowance: ReportedPlan["allowance"], currency: string): string | null {
  const parts = [
    roundTo(allowance.minutes, 1) > 0 ? minutes(allowance.minutes) : "",
    roundMoney(allowance.money) > 0 ? money(allowance.money, currency) : "",
  ].filter((part) => part !== "");
  if (parts.length === 0) return null;
  return `Set aside for what nobody has seen yet and for work that may fail: ${listed(parts)}, on average.`;
}
