import { computed } from "@preact/signals";
import { fetchPage } from "../App.tsx";
import { askingOf, findsShown } from "../state/finds.ts";
import { answered, holds } from "../state/holds.ts";
import { reference, referenceFault } from "../state/reference.ts";
import type { Route } from "../state/route.ts";

/** Comes once everything has come, or failed to, that the page in sight shows, so that it can be drawn whole at once. */
export async function stands(here: Route): Promise<void> {
  const page = fetchPage(here).catch(() => undefined);
  await holds(computed(() => reference.value !== null || referenceFault.value !== null));
  await Promise.all(findsShown.peek().map(({ id }) => answered(askingOf(id))));
  if (here.page === "together") await (await import("../together/setStands.ts")).setStands();
  if (here.page === "selling" && here.id !== null)
    await (await import("../selling/planStands.ts")).planStands(here.id);
  await page;
}
