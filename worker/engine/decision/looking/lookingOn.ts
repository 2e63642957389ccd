import type { Check } from "../../inspection/check.ts";
import type { Money } from "../../quantity.ts";
import { drawLevels, SCENARIO_COUNT } from "../scenarioDraws.ts";
import type { Situation } from "../situation.ts";
import { answerOf } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import type { LookingOn, LookList, NextCheck, UnmadeCheck } from "./nextCheck.ts";
import { sampleInformation } from "./sampleInformation.ts";

/** Whether to look on: single looks, and all that is left in one place together. */
export function lookingOn(looking: Looking, looks: readonly NextCheck[]): LookingOn {
  const spot = listAt("spot", looking, looks);
  const enough = spot.netGain <= 0 && looks.every(({ netGain }) => netGain <= 0);
  return { spot, bench: listAt("bench", looking, looks), enough };
}

function listAt(where: Check["where"], looking: Looking, looks: readonly NextCheck[]): LookList {
  const { settled, unseen } = looking.find.situation;
  const list = looks.filter(
    (look): look is UnmadeCheck =>
      "check" in look && look.where === where && unseen.faults.some(({ check }) => check.id === look.check),
  );
  const checks = list.map(({ check }) => check);
  const minutes = list.reduce((sum, look) => sum + look.minutes, 0);
  const single = Math.max(0, ...list.map((look) => look.sampleInformation));
  const worth = list.length > 1 ? Math.max(single, together(checks, looking)) : single;
  return {
    checks,
    minutes,
    sampleInformation: worth,
    netGain: worth - (minutes * settled.workshop.hourlyGoal) / 60,
  };
}

/**
 * Checks known together. Their levels are drawn with the history that links them, each draw an answer; what is not among them stays as uncertain as the draw
 * leaves it.
 */
function together(checks: readonly string[], { find, begun, outlookOf }: Looking): Money {
  const outlook = outlookOf(checks)!;
  const { faults } = find.situation.unseen;
  const places = checks.map((id) => faults.findIndex(({ check }) => check.id === id));
  const answers = Array.from({ length: SCENARIO_COUNT }, (_, index) => {
    const drawn = ranksDrawn(index, find.situation);
    const ranks = places.map((place) => drawn[place]!);
    return answerOf(outlook(ranks, 1 / SCENARIO_COUNT), begun);
  });
  return sampleInformation(answers);
}

function ranksDrawn(index: number, { unseen }: Situation): Int8Array {
  const count = unseen.faults.length;
  const into = { ranks: new Int8Array(count), within: new Float64Array(count) };
  return drawLevels(index, unseen, into).ranks;
}
