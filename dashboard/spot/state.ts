import { batch } from "@preact/signals";
import { withGoal } from "../finds/find.ts";
import type { OwnFind } from "../finds/own.ts";
import { askingOf, finds, ownFinds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { browserStore, shelf } from "../state/shelf.ts";
import type { Step } from "./trail.ts";
import { openTrails } from "./trails.ts";

export const trails = openTrails(shelf(browserStore(), "spokeworth.spot"));

/**
 * Keeps a find and its trail, and asks about it at once: a press is a whole answer, not a letter of one.
 * @param trail the way back as it now is
 */
export function putOnTheSpot(find: OwnFind, trail: readonly Step[]): void {
  // Together, so that whoever keeps the answers up to date sees this question asked already.
  batch(() => {
    ownFinds.put(find);
    trails.put(
      find.id,
      trail,
      ownFinds.all.value.map(({ id }) => id),
    );
    const asked = finds.value.find(({ id }) => id === find.id);
    const hourlyGoal = goal.value;
    if (asked !== undefined && hourlyGoal !== null)
      askingOf(find.id).ask(withGoal(asked.body, hourlyGoal), 0);
  });
}
