import type { Answers } from "../answers/answers.ts";
import type { Check, Reference } from "../api/types.ts";
import { applicable, type Described, settled } from "../checks/applies.ts";
import { sprocketsOf } from "../checks/limits.ts";

/** What of the bike's description a check's card depends on. */
export interface Bike {
  /** With every gap filled as the API fills it. */
  readonly attributes: Described;
  /** Undefined where it is not known. */
  readonly rearSprockets: number | undefined;
}

/** The bike as the checks see it. */
export function bikeOf({ attributes, rearSprockets }: Answers, { attributeDefaults }: Reference): Bike {
  return {
    attributes: settled(attributes, attributeDefaults),
    rearSprockets: sprocketsOf(attributes, rearSprockets, attributeDefaults),
  };
}

/** The checks that apply to it, in the catalogue's order. */
export function checksOn(bike: Bike, { checks }: Pick<Reference, "checks">): readonly Check[] {
  return applicable(checks, bike.attributes);
}
