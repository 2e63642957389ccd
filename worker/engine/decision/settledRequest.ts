import type { Attributes } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import { settleAttributes } from "../inspection/attributeDefaults.ts";
import { rearSprockets } from "../inspection/neededLevel.ts";
import type { Minutes, Money, Probability } from "../quantity.ts";
import type { PartId } from "../service/part.ts";
import type { Workshop } from "../service/workshop.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { type Market, marketOf } from "./market.ts";

/** A request with every default filled in: nothing below this point asks what was left out. */
export interface SettledRequest {
  readonly request: AppraisalRequest;
  readonly currency: string;
  readonly attributes: Attributes;
  readonly rearSprockets: number | undefined;
  readonly originality: Probability;
  readonly desirability: Probability;
  readonly missingParts: readonly PartId[];
  readonly purchase: {
    readonly price: Money;
    readonly paid: boolean;
    readonly travelMinutes: Minutes;
    readonly travelCost: Money;
  };
  readonly soFar: { readonly money: Money; readonly minutes: Minutes };
  /** What is believed of prices, the user's own taken in. */
  readonly market: Market;
  readonly workshop: Workshop;
  readonly fee: { readonly rate: Probability; readonly fixed: Money };
  readonly packing: Money;
  readonly priceLevel: number;
  /** The tables' prices are in another currency, and nothing says how prices compare. */
  readonly unconverted: boolean;
  /** 1 to 12; null: the seasons averaged. */
  readonly month: number | null;
}

/**
 * Fills a request from the tables of defaults.
 * @throws DomainError `unknown-id` for a part or tool that is not in the catalogue
 */
export function settleRequest(request: AppraisalRequest, book: Book): SettledRequest {
  const { defaults, inspection } = book.catalogue;
  const { find, workshop = {} } = request;
  const attributes = settleAttributes(find.attributes, inspection.attributeDefaults);
  const { purchase, soFar } = find;
  const priceLevel = workshop.priceLevel ?? defaults.priceLevel;
  return {
    request,
    currency: request.currency ?? defaults.currency,
    attributes,
    rearSprockets: rearSprockets(attributes, find.dimensions),
    originality: find.originality ?? defaults.originality,
    desirability: find.desirability ?? defaults.desirability,
    missingParts: missingParts(request, attributes, book),
    purchase: {
      price: purchase?.price ?? defaults.purchase.price,
      paid: purchase?.paid ?? defaults.purchase.paid,
      travelMinutes: purchase?.travelMinutes ?? defaults.purchase.travelMinutes,
      travelCost: purchase?.travelCost ?? defaults.purchase.travelCost,
    },
    soFar: { money: soFar?.money ?? 0, minutes: soFar?.minutes ?? 0 },
    market: marketOf(request.comparables ?? [], attributes, priceLevel, book),
    workshop: settleWorkshop(request, book),
    fee: { rate: workshop.fee?.rate ?? defaults.fee.rate, fixed: workshop.fee?.fixed ?? defaults.fee.fixed },
    packing: workshop.packing ?? defaults.packing,
    priceLevel,
    unconverted:
      (request.currency ?? defaults.currency) !== defaults.currency && workshop.priceLevel === undefined,
    month: workshop.month ?? null,
  };
}

function settleWorkshop({ workshop = {} }: AppraisalRequest, book: Book): Workshop {
  const { defaults } = book.catalogue;
  for (const id of workshop.tools ?? []) known(book.service.tools, id, "tool", "/workshop/tools");
  for (const id of Object.keys(workshop.partPrices ?? {}))
    known(book.service.parts, id, "part", "/workshop/partPrices");
  return {
    hourlyGoal: workshop.hourlyGoal ?? defaults.hourlyGoal,
    speedFactor: workshop.speedFactor ?? defaults.speedFactor,
    speedSpread: defaults.speedSpread,
    skill: workshop.skill ?? defaults.skill,
    tools: workshop.tools ? new Set(workshop.tools) : null,
    partPrices: new Map(Object.entries(workshop.partPrices ?? {})),
    deliveryPerOrder: defaults.delivery.perOrder,
    sellingMinutes: workshop.sellingMinutes ?? null,
  };
}

function missingParts(
  { find }: AppraisalRequest,
  { completeness }: Attributes,
  book: Book,
): readonly PartId[] {
  for (const id of find.missingParts ?? []) known(book.service.parts, id, "part", "/find/missingParts");
  if (find.missingParts && find.missingParts.length > 0) return find.missingParts;
  return book.catalogue.defaults.missingParts[completeness] ?? [];
}

function known(table: ReadonlyMap<string, unknown>, id: string, what: string, pointer: string): void {
  if (!table.has(id))
    throw new DomainError(
      "unknown-id",
      what,
      id,
      `a ${what} of the catalogue (GET /v1/reference lists them)`,
      pointer,
    );
}
