import type { Attributes, Condition } from "../../../worker/engine/bicycle.ts";
import type { Catalogue } from "../../../worker/engine/decision/catalogue.ts";
import { receivedShare } from "../../../worker/engine/decision/pricing.ts";
import type { Situation } from "../../../worker/engine/decision/situation.ts";
import type { Safety } from "../../../worker/engine/inspection/check.ts";
import type { Position } from "../../../worker/engine/inspection/finding.ts";
import type { LogNormal } from "../../../worker/engine/statistics/logNormal.ts";

/** A check that was looked at. */
export interface Seen {
  readonly check: string;
  readonly level: string;
  readonly rank: number;
  readonly position: Position;
  readonly safety: Safety;
}

/**
 * What the walker takes from the engine as it stands, since other tests prove it: the description with its defaults filled in, what was seen and measured as
 * levels, the user's terms, and the going rate of each state (the regression). Everything else it works out from the tables.
 */
export interface Given {
  readonly tables: Catalogue;
  readonly attributes: Attributes;
  readonly seen: readonly Seen[];
  readonly missingParts: readonly string[];
  readonly terms: Situation["settled"]["workshop"];
  readonly purchase: Situation["settled"]["purchase"];
  readonly fee: { readonly rate: number; readonly fixed: number };
  readonly packing: number;
  readonly share: { readonly rideable: number; readonly asFound: number };
  readonly prices: {
    readonly notPolished: number;
    readonly rideable: (
      condition: number,
      finish: { readonly polished: boolean; readonly repainted: boolean },
    ) => LogNormal;
    readonly asFoundRiding: LogNormal;
    readonly asFoundNotRiding: LogNormal;
    readonly parts: LogNormal;
  };
}

export function givenOf({ settled, book, inspection, pricing }: Situation): Given {
  return {
    tables: book.catalogue,
    attributes: settled.attributes,
    seen: inspection.findings,
    missingParts: settled.missingParts,
    terms: settled.workshop,
    purchase: settled.purchase,
    fee: settled.fee,
    packing: settled.packing,
    share: {
      rideable: receivedShare(settled, book, "rideable"),
      asFound: receivedShare(settled, book, "asFound"),
    },
    prices: pricing,
  };
}

/** Whether the bike is as all the conditions say. */
export function fits(conditions: readonly Condition[], attributes: Attributes): boolean {
  return conditions.every(({ attribute, isOneOf }) =>
    isOneOf.some((value) => value === attributes[attribute]),
  );
}
