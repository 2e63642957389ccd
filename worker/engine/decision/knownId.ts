import { DomainError } from "../domainError.ts";

/** @throws DomainError `unknown-id` where a table lacks the id */
export function requireKnown(
  table: ReadonlyMap<string, unknown>,
  id: string,
  what: string,
  pointer: string,
): void {
  if (!table.has(id))
    throw new DomainError(
      "unknown-id",
      what,
      id,
      `one of the ${what}s of the catalogue (GET /v1/reference lists them)`,
      pointer,
    );
}
