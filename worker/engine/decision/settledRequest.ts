import type { Attributes } from "../bicycle.ts";
import { settleAttributes } from "../inspection/attributeDefaults.ts";
import { rearSprockets } from "../inspection/neededLevel.ts";
import type { Minutes, Money, Probability } from "../quantity.ts";
import type { OperationId } from "../service/operation.ts";
import type { PartId } from "../service/part.ts";
import { reuseWorthOf, type Stock } from "../service/stock.ts";
import type { Workshop } from "../service/workshop.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { requireKnown } from "./knownId.ts";
import { type Market, marketOf } from "./market.ts";
import { type SoFar, soFarOf } from "./soFar.ts";

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
  /** As it was told. */
  readonly soFar: SoFar;
  /** Finished work. */
  readonly done: ReadonlySet<OperationId>;
  /** Parts bought; once the find was looked over, without those that finished work has used up. */
  readonly stock: Stock;
  /** What the parts in stock are worth unused. Every course has it: one that fits a part gives its share up again in the plan's money. */
  readonly reuseWorth: Money;
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
  const { purchase } = find;
  const priceLevel = workshop.priceLevel ?? defaults.priceLevel;
  const soFar = soFarOf(request, book);
  const stock = new Map(soFar.bought.map(({ part, ...held }) => [part, held]));
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
    soFar,
    done: new Set(soFar.done),
    stock,
    reuseWorth: reuseWorthOf(stock),
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
  for (const id of workshop.tools ?? []) requireKnown(book.service.tools, id, "tool", "/workshop/tools");
  for (const id of Object.keys(workshop.partPrices ?? {}))
    requireKnown(book.service.parts, id, "part", "/workshop/partPrices");
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
  for (const id of find.missingParts ?? [])
    requireKnown(book.service.parts, id, "part", "/find/missingParts");
  if (find.missingParts && find.missingParts.length > 0) return find.missingParts;
  return book.catalogue.defaults.missingParts[completeness] ?? [];
}
