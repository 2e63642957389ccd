import { computed, signal } from "@preact/signals";
import { chosen, keptIds, toggled, withCopy } from "../compare/chosen.ts";
import { copyOf } from "../finds/copy.ts";
import type { Find } from "../finds/find.ts";
import { byRate, rowOf } from "../finds/row.ts";
import { askingOf, finds, ownFinds } from "./finds.ts";
import { goal } from "./goal.ts";
import { go } from "./route.ts";
import { browserStore, shelf } from "./shelf.ts";

const place = shelf(browserStore(), "spokeworth.compared");
const kept = signal<readonly string[] | null>(readKept());

function readKept(): readonly string[] | null {
  const found = place.read();
  return typeof found === "object" ? keptIds(found.value) : null;
}

/** Ids of the finds that have figures, best earner first. */
const best = computed(() => {
  const hourlyGoal = goal.value;
  if (hourlyGoal === null) return [];
  return finds.value
    .flatMap((find) => {
      const appraisal = askingOf(find.id).answer.value;
      const row = appraisal === null ? null : rowOf(find, appraisal, hourlyGoal);
      return row === null ? [] : [row];
    })
    .sort(byRate)
    .map(({ find }) => find.id);
});

/** Ids of the finds that stand side by side: the user's choice, at first the best earners. */
export const compared = computed(() =>
  chosen(
    kept.value,
    finds.value.map(({ id }) => id),
    best.value,
  ),
);

/** Whether the user has chosen them. */
export const isChosen = computed(() => kept.value !== null);

function choose(ids: readonly string[]): void {
  kept.value = ids;
  place.write(ids);
}

/** Adds a find to those side by side, or drops it. */
export function toggleCompared(id: string): void {
  choose(toggled(compared.value, id));
}

/** Makes a find of one's own with the same answers, puts it beside its original, and opens it to be changed on a page. */
export function copyToAsk(find: Find, page: "describe" | "spot" = "describe"): void {
  const own = ownFinds.get(find.id);
  const taken = ownFinds.all.value.map(({ name }) => name);
  const copy = copyOf(find, own, taken);
  // Before the copy is known: the finds side by side are those in sight.
  const beside = withCopy(compared.value, find.id, copy.id);
  ownFinds.put(copy);
  choose(beside);
  go(`/${page}/${encodeURIComponent(copy.id)}`);
}
