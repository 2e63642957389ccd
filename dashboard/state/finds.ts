import { computed, effect } from "@preact/signals";
import { withOwnPrices } from "../answers/body.ts";
import { withSoFar } from "../answers/soFar.ts";
import { appraise } from "../api/client.ts";
import type { Appraisal, AppraisalBody } from "../api/types.ts";
import { DEMO_FINDS } from "../finds/demo.ts";
import { type Find, withGoal } from "../finds/find.ts";
import { asFind, openOwnFinds } from "../finds/own.ts";
import { type Comparable, comparablesFor, partPricesOf } from "../ownPrices/comparables.ts";
import { localDay } from "../ownPrices/days.ts";
import { describedKind } from "../words/description.ts";
import { type Asking, createAsking } from "./asking.ts";
import { goal } from "./goal.ts";
import { ownPrices, vocabulary } from "./ownPrices.ts";
import { reference } from "./reference.ts";
import { browserStore, shelf } from "./shelf.ts";

export const ownFinds = openOwnFinds(shelf(browserStore(), "spokeworth.finds"));

/** The user's own sales as comparables, by find: worked out anew only where the sales changed, not with every keystroke. */
const comparablesOf = computed(() => {
  const sales = ownPrices.sales.value;
  const words = vocabulary.value;
  const currency = reference.value?.currency;
  const today = localDay(new Date());
  const known = new Map<string, readonly Comparable[]>();
  return ({ id, copyOf }: Pick<Find, "id" | "copyOf">): readonly Comparable[] => {
    if (words === null || currency === undefined) return [];
    const ids = copyOf === undefined ? [id] : [id, copyOf];
    const found = known.get(id) ?? comparablesFor(sales, ids, words, today, currency);
    known.set(id, found);
    return found;
  };
});

/** Every find that can be asked about: the user's own beside the invented ones, each with the user's own prices. */
export const finds = computed<readonly Find[]>(() => {
  const known = reference.value;
  const hourlyGoal = goal.value;
  const words = vocabulary.value;
  if (known === null || hourlyGoal === null || words === null) return [];
  const own = ownFinds.all.value.flatMap((one) => {
    const find = asFind(one, known.checks, hourlyGoal, describedKind(one.answers.attributes, known));
    return find === null ? [] : [{ ...find, body: withSoFar(find.body, one.answers.soFar, known) }];
  });
  const partPrices = partPricesOf(ownPrices.partPrices.value, words, known.currency);
  const comparables = comparablesOf.value;
  return [...DEMO_FINDS, ...own].map((find) => ({
    ...find,
    body: withOwnPrices(find.body, { partPrices, comparables: comparables(find) }),
  }));
});

/** The conversation about one find. */
export type FindAsking = Asking<AppraisalBody, Appraisal>;

const askings = new Map<string, FindAsking>();

/** The conversation about a find. */
export function askingOf(id: string): FindAsking {
  let asking = askings.get(id);
  if (asking === undefined) {
    asking = createAsking(appraise);
    askings.set(id, asking);
  }
  return asking;
}

/** Keeps every find's answer up to date with its description and the goal, and asks again when the connection is back. */
export function keepAsking(): void {
  effect(() => {
    const hourlyGoal = goal.value;
    if (hourlyGoal === null) return;
    for (const { id, body } of finds.value) {
      const asking = askingOf(id);
      asking.ask(withGoal(body, hourlyGoal), asking.answer.peek() === null ? 0 : undefined);
    }
  });
  addEventListener("online", () => {
    for (const asking of askings.values()) if (asking.fault.peek()?.kind === "no-signal") asking.again();
  });
}
