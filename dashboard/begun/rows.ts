import type { BoughtPart, PlannedOperation, PlannedPart, Reference } from "../api/types.ts";

/** Work that can be ticked as done. */
export interface JobRow {
  readonly operation: string;
  readonly name: string;
  readonly done: boolean;
  /** Expected minutes; null where it is in no plan in sight, as work that is done. */
  readonly minutes: number | null;
}

/** A thing that can be ticked as bought. */
export interface ThingRow {
  readonly part: string;
  readonly name: string;
  readonly unit: string;
  readonly bought: BoughtPart | null;
  /** What is still to be bought of it, and what one costs; null where nothing is. */
  readonly needed: Pick<PlannedPart, "quantity" | "price"> | null;
}

/**
 * The order of rows that were shown and of those now due: who was there keeps its place, so that nothing moves under the
 * hand that ticked it; what came anew stands at the end.
 */
export function keptOrder(before: readonly string[], now: readonly string[]): readonly string[] {
  const due = new Set(now);
  return [...new Set([...before.filter((id) => due.has(id)), ...now])];
}

/**
 * The work of the plan in sight, and all that was ticked, whether the plan still holds it or not. An operation on both
 * wheels is one row.
 * @param before the order in which they stood
 */
export function jobRows(
  before: readonly string[],
  planned: readonly PlannedOperation[],
  done: readonly string[],
  { operations }: Pick<Reference, "operations">,
): readonly JobRow[] {
  const order = keptOrder(before, [...done, ...planned.map(({ operation }) => operation)]);
  return order.map((operation) => {
    const places = planned.filter((one) => one.operation === operation);
    return {
      operation,
      name: nameIn(operations, operation) ?? places[0]?.name ?? operation,
      done: done.includes(operation),
      minutes: places.length === 0 ? null : places.reduce((sum, { minutes }) => sum + minutes, 0),
    };
  });
}

/**
 * What the plan in sight needs to have bought, and all that was ticked. Tools and delivery are no parts: they are left out.
 * @param before the order in which they stood
 */
export function thingRows(
  before: readonly string[],
  shopping: readonly PlannedPart[],
  bought: readonly BoughtPart[],
  { parts }: Pick<Reference, "parts">,
): readonly ThingRow[] {
  const known = new Map(parts.map((part) => [part.id, part]));
  const needed = shopping.filter(({ part }) => known.has(part));
  const order = keptOrder(
    before,
    [...bought, ...needed].map(({ part }) => part),
  );
  return order.map((part) => ({
    part,
    name: known.get(part)?.name ?? part,
    unit: known.get(part)?.unit ?? "each",
    bought: bought.find((one) => one.part === part) ?? null,
    needed: needed.find((one) => one.part === part) ?? null,
  }));
}

function nameIn(rows: readonly { id: string; name: string }[], id: string): string | undefined {
  return rows.find((row) => row.id === id)?.name;
}
