import type { AppraisalBody, BoughtPart, Reference } from "../api/types.ts";

/** The job so far, as the user told it. Absent is nothing yet. */
export interface SoFar {
  /** Money spent, in the currency of the price. */
  readonly money?: number;
  /** Minutes spent. */
  readonly minutes?: number;
  /** Ids of the work that is finished, in the order told. */
  readonly done: readonly string[];
  /** One entry a part, in the order told. */
  readonly bought: readonly BoughtPart[];
}

export const NOTHING_SO_FAR: SoFar = { done: [], bought: [] };

/** Whether there is nothing to tell. */
export function isBlank({ money, minutes, done, bought }: SoFar): boolean {
  return money === undefined && minutes === undefined && done.length === 0 && bought.length === 0;
}

/** The same job with money or minutes changed; undefined takes them out. */
export function withSpent(soFar: SoFar, key: "money" | "minutes", value: number | undefined): SoFar {
  const { [key]: _, ...rest } = soFar;
  return value === undefined ? rest : { ...rest, [key]: value };
}

/** The same job with an operation done, or not. */
export function withDone(soFar: SoFar, operation: string, done: boolean): SoFar {
  const others = soFar.done.filter((id) => id !== operation);
  return { ...soFar, done: done ? [...others, operation] : others };
}

/** The same job with a part bought as told; null takes it back. */
export function withBought(soFar: SoFar, part: string, bought: Omit<BoughtPart, "part"> | null): SoFar {
  if (bought === null) return { ...soFar, bought: soFar.bought.filter((one) => one.part !== part) };
  const entry = { part, ...bought };
  const known = soFar.bought.some((one) => one.part === part);
  return {
    ...soFar,
    bought: known ? soFar.bought.map((one) => (one.part === part ? entry : one)) : [...soFar.bought, entry],
  };
}

/**
 * The same question with the job so far in it. Without any it is left as it is; work and parts that the catalogue does
 * not hold are left out (what was kept may be older than it).
 */
export function withSoFar(
  body: AppraisalBody,
  soFar: SoFar | undefined,
  { operations, parts }: Pick<Reference, "operations" | "parts">,
): AppraisalBody {
  if (soFar === undefined || isBlank(soFar)) return body;
  const jobs = new Set(operations.map(({ id }) => id));
  const things = new Set(parts.map(({ id }) => id));
  const told = {
    ...soFar,
    done: soFar.done.filter((id) => jobs.has(id)),
    bought: soFar.bought.filter(({ part }) => things.has(part)),
  };
  // The ids come from the catalogue; one that the API no longer takes it refuses by name.
  return { ...body, find: { ...body.find, soFar: told } } as unknown as AppraisalBody;
}
