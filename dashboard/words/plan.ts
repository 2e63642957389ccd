import type { PlannedOperation } from "../api/types.ts";
import { uncapital } from "./count.ts";
import { figure } from "./figure.ts";
import { between } from "./range.ts";

/** "2 × inner tube", "1.5 m brake cable housing". */
export function amountWords(name: string, quantity: number, unit: string): string {
  const n = figure(quantity, 2);
  return unit === "each" ? `${n} \u00d7 ${uncapital(name)}` : `${n} ${unit} ${uncapital(name)}`;
}

/** "40 to 50 N m, crank bolts; a marked value rules". */
export function torqueWords({ from, to, of }: NonNullable<PlannedOperation["torque"]>): string {
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

export const DECIDE_AGAIN = "you can still change course after this";
export const LEFT_AS_THEY_ARE = "Left as they are and told to the buyer:";
