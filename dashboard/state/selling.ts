import { computed } from "@preact/signals";
import { isComplete, NO_ANSWERS } from "../answers/answers.ts";
import { bodyOf, withOwnPrices } from "../answers/body.ts";
import { sellingPlan } from "../api/client.ts";
import type { SellingBody, SellingPlan } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { ALONE } from "../finds/own.ts";
import { comparablesFor, partPricesOf } from "../ownPrices/comparables.ts";
import { localDay } from "../ownPrices/days.ts";
import { openSellingTerms } from "../selling/terms.ts";
import { describedKind } from "../words/description.ts";
import { type Asking, createAsking } from "./asking.ts";
import { goal } from "./goal.ts";
import { knownIds } from "./knownIds.ts";
import { ownPrices, vocabulary } from "./ownPrices.ts";
import { reference } from "./reference.ts";
import { browserStore, shelf } from "./shelf.ts";

/** Terms of selling, and the bicycle that is none of the finds: kept in this browser. */
export const sellingTerms = openSellingTerms(shelf(browserStore(), "spokeworth.selling"), () => [
  ...knownIds(),
  ALONE,
]);

/** The bicycle of which only kind, era, material and tier are known; null until all four are. */
export const aloneFind = computed<Find | null>(() => {
  const known = reference.value;
  const words = vocabulary.value;
  const hourlyGoal = goal.value;
  const attributes = sellingTerms.kept.value.alone;
  const answers = { ...NO_ANSWERS, attributes };
  if (known === null || words === null || hourlyGoal === null || !isComplete(answers)) return null;
  const { currency, checks } = known;
  const today = localDay(new Date());
  return {
    id: ALONE,
    name: describedKind(attributes, known),
    called: "it",
    where: "",
    line: "",
    invented: false,
    body: withOwnPrices(bodyOf(answers, checks, hourlyGoal), {
      partPrices: partPricesOf(ownPrices.partPrices.value, words, currency),
      comparables: comparablesFor(ownPrices.sales.value, [ALONE], words, today, currency),
    }),
  };
});

/** The conversation about selling one find. */
export type SellingAsking = Asking<SellingBody, SellingPlan>;

const askings = new Map<string, SellingAsking>();

/** The conversation about selling a find. */
export function sellingAskingOf(id: string): SellingAsking {
  let asking = askings.get(id);
  if (asking === undefined) {
    asking = createAsking(sellingPlan);
    askings.set(id, asking);
  }
  return asking;
}
