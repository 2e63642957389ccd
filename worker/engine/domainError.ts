/** What went wrong, as data: the edge maps codes to statuses, screens map them to words. */
export type DomainErrorCode =
  | "out-of-domain"
  | "unknown-id"
  | "impossible-measurement"
  | "inconsistent-table";

/**
 * A refused argument. The message is one fixed sentence:
 * "<argument> requires <requirement>, got <value>".
 * `pointer` is the RFC 6901 path inside the request where that is known.
 */
export class DomainError extends Error {
  readonly code: DomainErrorCode;
  readonly argument: string;
  readonly value: unknown;
  readonly requirement: string;
  readonly pointer: string | undefined;

  constructor(
    code: DomainErrorCode,
    argument: string,
    value: unknown,
    requirement: string,
    pointer?: string,
  ) {
    super(`${argument} requires ${requirement}, got ${String(value)}`);
    this.name = "DomainError";
    this.code = code;
    this.argument = argument;
    this.value = value;
    this.requirement = requirement;
    this.pointer = pointer;
  }
}
