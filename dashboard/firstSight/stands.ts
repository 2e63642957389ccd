import { computed } from "@preact/signals";
import { fetchPage } from "../App.tsx";
import { askingOf, findsShown } from "../state/finds.ts";
import { answered, holds } from "../state/holds.ts";
import { reference, referenceFault } from "../state/reference.ts";
import type { Route } from "../state/route.ts";

/**
 * Comes once everything has come, or failed to, that the page in sight shows, so that it can be drawn whole at once.
 * @returns whether all of it came
 */
export async function stands(here: Route): Promise<boolean> {
  try {
    const page = fetchPage(here);
    const [answers] = await Promise.all([answersStand(here), page]);
    return answers;
  } catch {
    // A script did not come: the page says so itself.
    return false;
  }
}

async function answersStand(here: Route): Promise<boolean> {
  await holds(computed(() => reference.value !== null || referenceFault.value !== null));
  if (reference.peek() === null) return false;
  const finds = await Promise.all(findsShown.peek().map(({ id }) => answered(askingOf(id))));
  if (!finds.every(Boolean)) return false;
  if (here.page === "together") return (await import("../together/setStands.ts")).setStands();
  if (here.page === "selling" && here.id !== null)
    return (await import("../selling/planStands.ts")).planStands(here.id);
  return true;
}
