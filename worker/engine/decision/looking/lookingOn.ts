import type { Check } from "../../inspection/check.ts";
import { drawLevels, SCENARIO_COUNT } from "../scenarioDraws.ts";
import type { OpenFind } from "../weighFind.ts";
import { begunWithout } from "./begun.ts";
import { findOutlook } from "./findOutlook.ts";
import { answerOf } from "./levelOutlook.ts";
import type { LookingOn, LookList, NextCheck, UnmadeCheck } from "./nextCheck.ts";
import { type Answer, sampleInformation } from "./sampleInformation.ts";

/** Whether to look on: single looks, and all that is left in one place together. */
export function lookingOn(find: OpenFind, looks: readonly NextCheck[]): LookingOn {
  const listAt = listsOf(find, looks);
  const spot = listAt("spot");
  return {
    spot,
    bench: listAt("bench"),
    enough: spot.netGain <= 0 && looks.every(({ netGain }) => netGain <= 0),
  };
}

/**
 * Lists by place. The levels of a list are drawn together 128 times, with the history that links them; each draw is an answer, and what is not in the list
 * stays as uncertain as those levels leave it.
 */
function listsOf(find: OpenFind, looks: readonly NextCheck[]): (where: Check["where"]) => LookList {
  const { situation } = find;
  const { faults } = situation.unseen;
  const begun = begunWithout(find.courses, situation);
  const outlookOf = findOutlook(find);
  const draws = ranksDrawn(find);
  const goal = situation.settled.workshop.hourlyGoal / 60;
  return (where) => {
    const list = looks.filter(
      (look): look is UnmadeCheck =>
        "check" in look && look.where === where && faults.some(({ check }) => check.id === look.check),
    );
    const checks = list.map(({ check }) => check);
    const minutes = list.reduce((sum, look) => sum + look.minutes, 0);
    const single = Math.max(0, ...list.map((look) => look.sampleInformation));
    let together = 0;
    if (list.length > 1) {
      const outlook = outlookOf(checks)!;
      const places = checks.map((id) => faults.findIndex(({ check }) => check.id === id));
      const answers = draws.map(
        (ranks): Answer =>
          answerOf(
            outlook(
              places.map((place) => ranks[place]!),
              1 / SCENARIO_COUNT,
            ),
            begun,
          ),
      );
      together = sampleInformation(answers);
    }
    const information = Math.max(single, together);
    return { checks, minutes, sampleInformation: information, netGain: information - minutes * goal };
  };
}

function ranksDrawn({ situation: { unseen } }: OpenFind): readonly Int8Array[] {
  const count = unseen.faults.length;
  return Array.from({ length: SCENARIO_COUNT }, (_, index) => {
    const into = { ranks: new Int8Array(count), within: new Float64Array(count) };
    return drawLevels(index, unseen, into).ranks;
  });
}
