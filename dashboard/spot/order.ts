import type { Check, Observations } from "../api/types.ts";
import type { Advice } from "./advice.ts";
import { openLooks } from "./observed.ts";
import { type Look, looksOf, type Step, sameLook } from "./trail.ts";

/** What can be looked at where the bike stands, and what of it is worth its minute. */
export interface Queue {
  /** Best first. */
  readonly open: readonly Look[];
  /** Of those open, what is worth its minute and was not given up. */
  readonly worth: readonly Look[];
}

const CATALOGUE_ORDER: readonly Check["priority"][] = ["triage", "core", "extra"];

/**
 * The looks still open on the spot: in the order of the answer's advice, what it does not name behind in the
 * catalogue's order. Without advice everything open is taken for worth looking at.
 * @param checks those that apply to this bike
 */
export function queueOf(
  checks: readonly Check[],
  observations: Observations,
  trail: readonly Step[],
  advice: Advice | null,
): Queue {
  const here = checks.filter(({ where }) => where === "spot");
  const rank = new Map(advice?.order.map((check, i) => [check, i]));
  const place = ({ id, priority }: Check) => rank.get(id) ?? rank.size + CATALOGUE_ORDER.indexOf(priority);
  const sorted = [...here].sort((a, b) => place(a) - place(b));
  const open = sorted.flatMap((check) => openLooks(check, observations[check.id]));
  const given = looksOf(trail).filter(({ how }) => how === "cannot-tell");
  const worth = open.filter(
    (look) =>
      (advice === null || advice.worth.includes(look.check)) && !given.some((one) => sameLook(one, look)),
  );
  return { open, worth };
}

/**
 * The next look; null where enough was looked at. The other wheel of what was just looked at comes first, what was put
 * off last, the longest waiting before the others.
 * @param anyway the user looks on though nothing is worth its minute
 */
export function nextLook({ open, worth }: Queue, trail: readonly Step[], anyway: boolean): Look | null {
  const looks = looksOf(trail);
  const isPutOff = (look: Look) => looks.some((step) => step.how === "later" && sameLook(step, look));
  const isGivenUp = (look: Look) => looks.some((step) => step.how === "cannot-tell" && sameLook(step, look));
  const last = trail.at(-1);
  if (last?.kind === "look" && last.position !== null && last.how !== "later") {
    const other = open.find((look) => look.check === last.check && look.position !== last.position);
    if (other !== undefined && !isPutOff(other) && !isGivenUp(other)) return other;
  }
  const wanted = anyway ? open.filter((look) => !isGivenUp(look)) : worth;
  const fresh = wanted.find((look) => !isPutOff(look));
  if (fresh !== undefined) return fresh;
  const waiting = looks.find((step) => step.how === "later" && wanted.some((look) => sameLook(look, step)));
  // What was put off just now is not asked again at once.
  return waiting === undefined || waiting === last
    ? null
    : { check: waiting.check, position: waiting.position };
}
