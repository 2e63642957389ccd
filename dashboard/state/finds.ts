import { computed, effect } from "@preact/signals";
import { withOwnPrices } from "../answers/body.ts";
import { withSoFar } from "../answers/soFar.ts";
import { appraise } from "../api/client.ts";
import type { Appraisal, AppraisalBody } from "../api/types.ts";
import { DEMO_FINDS } from "../finds/demo.ts";
import { type Find, withGoal } from "../finds/find.ts";
import { asFind, type OwnFind, openOwnFinds } from "../finds/own.ts";
import { type Comparable, comparablesFor, partPricesOf } from "../ownPrices/comparables.ts";
import { localDay } from "../ownPrices/days.ts";
import { describedKind } from "../words/description.ts";
import { type Asking, createAsking } from "./asking.ts";
import { goal } from "./goal.ts";
import { ownPrices, vocabulary } from "./ownPrices.ts";
import { reference } from "./reference.ts";
import { route } from "./route.ts";
import { browserStore, shelf } from "./shelf.ts";
import { isShown } from "./shown.ts";

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

/** What a find asks with the user's own prices in it. */
const priced = computed(() => {
  const words = vocabulary.value;
  const known = reference.value;
  const comparables = comparablesOf.value;
  const partPrices =
    words === null || known === null ? {} : partPricesOf(ownPrices.partPrices.value, words, known.currency);
  return (find: Find): Find => ({
    ...find,
    body: withOwnPrices(find.body, { partPrices, comparables: comparables(find) }),
  });
});

/**
 * A described find as one to ask about, with the user's own prices; null while too little is known, or before the
 * catalogue has come.
 */
export function askable(own: OwnFind): Find | null {
  const known = reference.value;
  const hourlyGoal = goal.value;
  if (known === null || hourlyGoal === null || vocabulary.value === null) return null;
  const find = asFind(own, known.checks, hourlyGoal, describedKind(own.answers.attributes, known));
  if (find === null) return null;
  return priced.value({ ...find, body: withSoFar(find.body, own.answers.soFar, known) });
}

/** Every find that can be asked about: the user's own beside the invented ones, each with the user's own prices. */
export const finds = computed<readonly Find[]>(() => {
  if (reference.value === null || goal.value === null || vocabulary.value === null) return [];
  return [...DEMO_FINDS.map(priced.value), ...ownFinds.all.value.flatMap((own) => askable(own) ?? [])];
});

/** The finds whose answers the page in sight shows. */
export const findsShown = computed<readonly Find[]>(() =>
  finds.value.filter(({ id }) => isShown(route.value, id)),
);

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

/** Removes a find of one's own, and what was asked about it. */
export function removeFind(id: string): void {
  ownFinds.remove(id);
  askingOf(id).stop();
}

/**
 * Keeps the answers that the page in sight shows up to date with their finds and the goal, and asks again when the
 * connection is back. What no page shows is not asked: on a phone an answer takes its time, and those in sight come first.
 */
export function keepAsking(): void {
  effect(() => {
    const hourlyGoal = goal.value;
    if (hourlyGoal === null) return;
    for (const { id, body } of findsShown.value) {
      const asking = askingOf(id);
      asking.ask(withGoal(body, hourlyGoal), asking.answer.peek() === null ? 0 : undefined);
    }
  });
  addEventListener("online", () => {
    for (const { id } of findsShown.peek()) {
      const asking = askingOf(id);
      if (asking.fault.peek()?.kind === "no-signal") asking.again();
    }
  });
}
