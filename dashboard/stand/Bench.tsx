import { useState } from "preact/hooks";
import type { CourseId, Reference } from "../api/types.ts";
import { madeOn } from "../checks/made.ts";
import { spokes } from "../checks/spokes.ts";
import { planInSight } from "../courses/planInSight.ts";
import { bikeOf, checksOn } from "../describe/bike.ts";
import { namesIn } from "../find/names.ts";
import { CautionsPanel } from "../find/SeenPanels.tsx";
import type { Find } from "../finds/find.ts";
import { Trouble } from "../parts/Trouble.tsx";
import { useKeys } from "../parts/useKeys.ts";
import { Wheel } from "../signs/Wheel.tsx";
import { handling } from "../state/handling.ts";
import { refusal } from "../words/refusal.ts";
import { Controls } from "./Controls.tsx";
import { Groups } from "./Groups.tsx";
import { LastChange } from "./LastChange.tsx";
import { openLooks, paidTests, progressOf, rankedLooks, worthTogether } from "./looks.ts";
import { NextHere } from "./NextHere.tsx";
import { OpenList } from "./OpenList.tsx";
import { pressCannotTell, pressLevel } from "./press.ts";
import { Ready } from "./Ready.tsx";
import { StandHead } from "./StandHead.tsx";
import { useBench } from "./useBench.ts";
import { useNext } from "./useNext.ts";
import { useOpened } from "./useOpened.ts";
import { Work } from "./Work.tsx";

/** A find on the stand: the next look on top, every check by group, the work, and what stands before road and sale. */
export function Bench({ find, known }: { find: Find; known: Reference }) {
  const bench = useBench(find);
  const { answers, appraisal, fault } = bench;
  const [picked, setPicked] = useState<CourseId | null>(null);
  const bike = bikeOf(answers, known);
  const checks = checksOn(bike, known);
  const made = { observations: answers.observations, findings: appraisal?.findings ?? [] };
  const groups = progressOf(known, checks, (check) => madeOn(check, made));
  const ranked = rankedLooks(appraisal);
  const looks = openLooks(checks, made, ranked);
  const together = worthTogether(appraisal?.lookingOn ?? null);
  const next = useNext(bench, checks, looks, together);
  const names = namesIn(known);
  const rows = useOpened(groups);
  const undo = () => {
    const check = bench.last?.check ?? null;
    bench.undo();
    if (check !== null) next.show(check);
  };
  useKeys(handling.value.keys, {
    level: pressLevel,
    cannotTell: pressCannotTell,
    undo,
    find: () => document.getElementById("find-check")?.focus(),
  });
  const byId = new Map(checks.map((check) => [check.id, check]));
  const wheel = spokes(known.checks, checks, (id) => {
    const check = byId.get(id);
    return check !== undefined && madeOn(check, made);
  });
  const course = appraisal === null ? undefined : planInSight(appraisal, picked);
  const stopped = appraisal !== null && appraisal.decision.stop !== null;
  return (
    <main class={handling.value.gloves ? "page stand gloved" : "page stand"} id="main">
      <StandHead bench={bench} wheel={<Wheel spokes={wheel} size={104} />} />
      {fault !== null && (
        <Trouble fault={fault} again={bench.again} say={(field) => refusal(field, known.checks)} />
      )}
      <Controls />
      <div class="standgrid">
        <NextHere
          look={
            next.shown === null
              ? null
              : { check: next.shown, worth: ranked.find(({ check }) => check === next.shown?.id) ?? null }
          }
          isLeaving={next.isLeaving}
          takeFocus={next.isMoved}
          owed={next.pick.owed}
          open={next.pick.open}
          onGoOn={next.goOn}
          onLater={next.putOff}
          onDone={next.leave}
          currency={known.currency}
          bench={bench}
          bike={bike}
        />
        <OpenList
          looks={looks}
          tests={paidTests(appraisal?.nextChecks ?? [])}
          names={names}
          currency={known.currency}
          onCheck={rows.show}
        />
        <div>
          <Groups groups={groups} bench={bench} bike={bike} rows={rows} />
          {appraisal !== null && !stopped && (
            <Work
              bench={bench}
              appraisal={appraisal}
              known={known}
              names={names}
              picked={picked}
              onPick={setPicked}
              onCheck={rows.show}
            />
          )}
        </div>
        {appraisal !== null && (
          <div>
            <Ready appraisal={appraisal} checks={checks} course={course} names={names} onCheck={rows.show} />
            <CautionsPanel appraisal={appraisal} />
          </div>
        )}
      </div>
      <LastChange bench={bench} onUndo={undo} />
    </main>
  );
}
