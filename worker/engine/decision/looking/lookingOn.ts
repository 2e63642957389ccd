import type { Check, CheckId } from "../../inspection/check.ts";
import type { Money } from "../../quantity.ts";
import { COURSES } from "../../service/operation.ts";
import type { Book } from "../book.ts";
import type { Situation } from "../situation.ts";
import { answerOf, type LevelOutlook } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import type { LookingOn, LookList, NextCheck, UnmadeCheck } from "./nextCheck.ts";
import { planningAnew } from "./planningAnew.ts";
import { sampleInformation } from "./sampleInformation.ts";
import { weighedAgain } from "./weighedAgain.ts";

/** A list so long that all of it good makes another plan. */
const MANY = 4;

/** Whether to look on: single looks, and all that is left in one place together. */
export function lookingOn(looking: Looking, looks: readonly NextCheck[], book: Book): LookingOn {
  const spot = listAt("spot", looking, looks, book);
  const enough = spot.netGain <= 0 && looks.every(({ netGain }) => netGain <= 0);
  return { spot, bench: listAt("bench", looking, looks, book), enough };
}

function listAt(where: Check["where"], looking: Looking, looks: readonly NextCheck[], book: Book): LookList {
  const { settled, unseen } = looking.find.situation;
  const list = looks.filter(
    (look): look is UnmadeCheck =>
      "check" in look && look.where === where && unseen.faults.some(({ check }) => check.id === look.check),
  );
  const checks = list.map(({ check }) => check);
  const minutes = list.reduce((sum, look) => sum + look.minutes, 0);
  const cost = (minutes * settled.workshop.hourlyGoal) / 60;
  let worth = Math.max(0, ...list.map((look) => look.sampleInformation));
  if (list.length > 1) {
    const draws = drawsOf(checks, looking.find.situation);
    const outlooks = together(checks, draws, looking);
    worth = Math.max(worth, worthOf(outlooks, looking));
    if (worth <= cost && where === "spot" && list.length >= MANY && mayGain(cost, checks, looking, book)) {
      const fallsShort = (some: readonly LevelOutlook[]) => worthOf(some, looking) <= cost;
      const anew = planningAnew(outlooks, checks, draws, looking, book, fallsShort);
      worth = Math.max(worth, worthOf(anew, looking));
    }
  }
  return { checks, minutes, sampleInformation: worth, netGain: worth - cost };
}

/**
 * Whether knowing the checks may be worth more than an amount. Where the bike is left now, it is worth most where all of them turn out best: a worse finding
 * never makes any course worth more.
 */
function mayGain(amount: Money, checks: readonly CheckId[], { find, now }: Looking, book: Book): boolean {
  if (now.course !== "leave") return true;
  const unseen = checks.map((id) => find.inspection.unseen.find(({ check }) => check === id)!);
  const best = weighedAgain(find, unseen, new Array(checks.length).fill(0), 1, book);
  return best.worths[COURSES.indexOf(best.course)]! - now.expected.netBenefit > amount;
}

/** Levels of the checks in every scenario, with the history that links them. */
function drawsOf(checks: readonly string[], { unseen, draws }: Situation): readonly (readonly number[])[] {
  const places = checks.map((id) => unseen.faults.findIndex(({ check }) => check.id === id));
  return draws().map(({ ranks }) => places.map((place) => ranks[place]!));
}

/**
 * Checks known together, an outlook a draw; what is not among them stays as uncertain as the draw leaves it. A few checks come to the same levels in many
 * draws: each combination is looked at once.
 */
function together(
  checks: readonly string[],
  draws: readonly (readonly number[])[],
  { outlookOf }: Looking,
): readonly LevelOutlook[] {
  const outlook = outlookOf(checks)!;
  const known = new Map<string, LevelOutlook>();
  return draws.map((ranks) => {
    const levels = ranks.join();
    let one = known.get(levels);
    if (!one) {
      one = outlook(ranks, 1 / draws.length);
      known.set(levels, one);
    }
    return one;
  });
}

function worthOf(outlooks: readonly LevelOutlook[], { begun }: Looking): Money {
  return sampleInformation(outlooks.map((one) => answerOf(one, begun)));
}
