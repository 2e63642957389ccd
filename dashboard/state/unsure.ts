import { signal } from "@preact/signals";
import { isRecord } from "../answers/parsed.ts";
import type { Find } from "../finds/find.ts";
import { browserStore, shelf } from "./shelf.ts";

const place = shelf(browserStore(), "spokeworth.unsure");

/** By find: the checks that its owner looked at and could not tell. They count as not looked at, and are not asked again. */
const unsure = signal<Readonly<Record<string, readonly string[]>>>(kept());

function kept(): Record<string, readonly string[]> {
  const found = place.read();
  if (typeof found !== "object" || !isRecord(found.value)) return {};
  return Object.fromEntries(
    Object.entries(found.value).flatMap(([find, checks]) =>
      Array.isArray(checks) ? [[find, checks.filter((check) => typeof check === "string")]] : [],
    ),
  );
}

/** The checks of a find that could not be told. A copy has those of its original until it has some of its own. */
export function unsureOf({ id, copyOf }: Pick<Find, "id" | "copyOf">): readonly string[] {
  const kept = unsure.value;
  return kept[id] ?? (copyOf === undefined ? undefined : kept[copyOf]) ?? [];
}

/** Keeps which checks of a find could not be told; none is kept too, for a copy would else take its original's. */
export function setUnsure(find: string, checks: readonly string[]): void {
  unsure.value = { ...unsure.value, [find]: checks };
  place.write(unsure.value);
}
