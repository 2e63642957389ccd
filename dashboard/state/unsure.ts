import { signal } from "@preact/signals";
import { isRecord } from "../answers/parsed.ts";
import { browserStore, shelf } from "./shelf.ts";

const place = shelf(browserStore(), "spokeworth.unsure");

/** By find: the checks that its owner looked at and could not tell. They count as not looked at, and are not asked again. */
export const unsure = signal<Readonly<Record<string, readonly string[]>>>(kept());

function kept(): Record<string, readonly string[]> {
  const found = place.read();
  if (typeof found !== "object" || !isRecord(found.value)) return {};
  return Object.fromEntries(
    Object.entries(found.value).flatMap(([find, checks]) =>
      Array.isArray(checks) ? [[find, checks.filter((check) => typeof check === "string")]] : [],
    ),
  );
}

/** Keeps which checks of a find could not be told. */
export function setUnsure(find: string, checks: readonly string[]): void {
  const { [find]: _, ...rest } = unsure.value;
  unsure.value = checks.length === 0 ? rest : { ...rest, [find]: checks };
  place.write(unsure.value);
}
