import type { Check } from "../../inspection/check.ts";
import type { Money } from "../../quantity.ts";
import type { Book } from "../book.ts";
import { drawLevels, SCENARIO_COUNT } from "../scenarioDraws.ts";
import type { Situation } from "../situation.ts";
import { answerOf, type LevelOutlook } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import type { LookingOn, LookList, NextCheck, UnmadeCheck } from "./nextCheck.ts";
import { planningAnew } from "./planningAnew.ts";
import { sampleInformation } from "./sampleInformation.ts";

/** A list so long that all of it good makes another plan. */
const MANY = 4;

/** Whether to look on: single looks, and all that is left in one place together. */
export function lookingOn(looking: Looking, looks: readonly NextCheck[], book: Book): LookingOn {
  const draws = ranksDrawn(looking.find.situation);
  const list = (where: Check["where"]) => listAt(where, looking, looks, draws, book);
  const spot = list("spot");
  const enough = spot.netGain <= 0 && looks.every(({ netGain }) => netGain <= 0);
  return { spot, bench: list("bench"), enough };
}

function listAt(
  where: Check["where"],
  looking: Looking,
  looks: readonly NextCheck[],
  draws: readonly Int8Array[],
  book: Book,
): LookList {
  const { inspection, situation } = looking.find;
  const { faults } = situation.unseen;
  const list = looks.filter(
    (look): look is UnmadeCheck =>
      "check" in look && look.where === where && faults.some(({ check }) => check.id === look.check),
  );
  const checks = list.map(({ check }) => check);
  const minutes = list.reduce((sum, look) => sum + look.minutes, 0);
  const cost = (minutes * situation.settled.workshop.hourlyGoal) / 60;
  const unseen = checks.map((id) => inspection.unseen.find(({ check }) => check === id)!);
  const places = checks.map((id) => faults.findIndex(({ check }) => check.id === id));
  const ranks = draws.map((drawn) => places.map((place) => drawn[place]!));
  let worth = Math.max(0, ...list.map((look) => look.sampleInformation));
  if (list.length > 1) {
    const outlook = looking.outlookOf(checks)!;
    const outlooks = ranks.map((drawn) => outlook(drawn, 1 / ranks.length));
    worth = Math.max(worth, worthOf(outlooks, looking));
    if (worth <= cost && where === "spot" && list.length >= MANY)
      worth = Math.max(worth, worthOf(planningAnew(outlooks, unseen, ranks, looking, book), looking));
  }
  return { checks, minutes, sampleInformation: worth, netGain: worth - cost };
}

/** Each draw is an answer; what is not in the list stays as uncertain as the draw leaves it. */
function worthOf(outlooks: readonly LevelOutlook[], { begun }: Looking): Money {
  return sampleInformation(outlooks.map((one) => answerOf(one, begun)));
}

function ranksDrawn({ unseen }: Situation): readonly Int8Array[] {
  const count = unseen.faults.length;
  return Array.from({ length: SCENARIO_COUNT }, (_, index) => {
    const into = { ranks: new Int8Array(count), within: new Float64Array(count) };
    return drawLevels(index, unseen, into).ranks;
  });
}
