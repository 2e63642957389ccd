import { type Attributes, holds } from "../bicycle.ts";
import type { Check } from "./check.ts";

/** Whether the bike has what the check looks at. */
export function appliesTo(check: Check, attributes: Attributes): boolean {
  return holds(check.appliesTo, attributes);
}

/** Why a check does not apply, in words; null where it does. */
export function whyNotApplicable(check: Check, attributes: Attributes): string | null {
  const failing = check.appliesTo.find((condition) => !holds([condition], attributes));
  if (failing === undefined) return null;
  const name = words(failing.attribute);
  return `${check.name} does not apply to this bike: its ${name} is ${attributes[failing.attribute]}, the check is for ${failing.isOneOf.join(", ")}.`;
}

/** "frameMaterial" as "frame material". */
function words(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
