import type { Minutes, Money } from "../quantity.ts";
import type { OperationId } from "../service/operation.ts";
import type { PartId } from "../service/part.ts";
import type { BoughtPart } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { requireKnown } from "./knownId.ts";

/** The job so far. */
export interface SoFar {
  readonly money: Money;
  readonly minutes: Minutes;
  readonly done: readonly OperationId[];
  readonly bought: readonly BoughtPart[];
}

/**
 * The job so far as it was told, each operation and part once.
 * @throws DomainError `unknown-id` for an operation or part that is not in the catalogue
 */
export function soFarOf({ find: { soFar = {} } }: AppraisalRequest, { service }: Book): SoFar {
  const { money = 0, minutes = 0, done = [], bought = [] } = soFar;
  for (const id of done) requireKnown(service.operations, id, "operation", "/find/soFar/done");
  for (const { part } of bought) requireKnown(service.parts, part, "part", "/find/soFar/bought");
  return { money, minutes, done: [...new Set(done)], bought: mergeBought(bought) };
}

/** One entry a part; of entries that differ in worth the mean stands. */
function mergeBought(
  entries: readonly { part: PartId; quantity?: number | undefined; reuseValue?: Money | undefined }[],
): readonly BoughtPart[] {
  const lines = new Map<PartId, BoughtPart>();
  for (const { part, quantity = 1, reuseValue = 0 } of entries) {
    const line = lines.get(part) ?? { part, quantity: 0, reuseValue: 0 };
    const all = line.quantity + quantity;
    const worth = (line.quantity * line.reuseValue + quantity * reuseValue) / all;
    lines.set(part, { part, quantity: all, reuseValue: worth });
  }
  return [...lines.values()];
}
