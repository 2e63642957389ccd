import { useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import type { Appraisal, CourseId, Reference } from "../api/types.ts";
import { planInSight } from "../courses/planInSight.ts";
import { bestOther } from "../courses/standing.ts";
import { FindWheel } from "../finds/FindWheel.tsx";
import type { Find } from "../finds/find.ts";
import { isInvented } from "../finds/ownership.ts";
import { ListingFold } from "../listing/ListingFold.tsx";
import { ownTask } from "../parts/ownTask.ts";
import { Trouble } from "../parts/Trouble.tsx";
import { useLater } from "../parts/useLater.ts";
import { lengthUnit } from "../state/units.ts";
import { CoursesPanel } from "./CoursesPanel.tsx";
import { Halt } from "./Halt.tsx";
import { namesIn } from "./names.ts";
import { PartsPanel } from "./PartsPanel.tsx";
import { PlanPanel } from "./PlanPanel.tsx";
import { ReadinessPanel } from "./ReadinessPanel.tsx";
import { CautionsPanel, FindingsPanel } from "./SeenPanels.tsx";
import { ValuePanel } from "./ValuePanel.tsx";
import { VerdictPanel } from "./VerdictPanel.tsx";

interface FindPanelsProps {
  readonly find: Find;
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly goal: number;
  readonly price: number | undefined;
  readonly paid: boolean;
  /** Parts that were worked out with a price of the user's own. */
  readonly ownParts: ReadonlySet<string>;
  readonly dimmed: boolean;
  /** Why there is no newer answer. */
  readonly fault: Fault | null;
  /** It is only looked at, not kept here: nothing is begun or sold of it. */
  readonly visiting: boolean;
}

const laterPanels = () => import("./laterPanels.ts");
/** The same a task later, so that the page answers between the two. */
const laterStill = async () => {
  const panels = await laterPanels();
  await ownTask();
  return panels;
};

/** Everything about one find, in the order it matters: the verdict, what warns, the courses, the work, the prices, what was seen. */
export function FindPanels(props: FindPanelsProps) {
  const { find, known, appraisal, goal: hourlyGoal, price, paid, ownParts, dimmed, fault, visiting } = props;
  const [picked, setPicked] = useState<CourseId | null>(null);
  const { loaded: later, failed, again } = useLater(laterPanels);
  const { loaded: last } = useLater(laterStill);
  const names = namesIn(known, lengthUnit.value);
  const sellAt = visiting ? null : `/finds/${encodeURIComponent(find.id)}/listing`;
  const planAt = `/selling/${encodeURIComponent(find.id)}`;
  const wheel = <FindWheel find={find} reference={known} size={104} />;
  const findings = <FindingsPanel appraisal={appraisal} names={names} wheel={wheel} />;
  const listing = visiting ? null : (
    <ListingFold answer={appraisal} body={find.body} reference={known} invented={isInvented(find)} />
  );
  if (appraisal.decision.stop !== null) {
    return (
      <div class="halted">
        <Halt appraisal={appraisal} />
        <CautionsPanel appraisal={appraisal} />
        {findings}
        {listing}
      </div>
    );
  }
  return (
    <>
      <VerdictPanel
        appraisal={appraisal}
        goal={hourlyGoal}
        price={price}
        paid={paid}
        sellAt={sellAt}
        planAt={planAt}
      />
      <div class="two">
        <div class="b1">
          <CautionsPanel appraisal={appraisal} />
          <ReadinessPanel appraisal={appraisal} names={names} find={visiting ? null : find.id} />
        </div>
        <div class="a">
          <CoursesPanel appraisal={appraisal} goal={hourlyGoal} dimmed={dimmed} />
          {failed && <Trouble fault={{ kind: "no-signal" }} again={again} />}
          {later !== null && <later.MovesPanel appraisal={appraisal} goal={hourlyGoal} dimmed={dimmed} />}
          <PlanPanel
            appraisal={appraisal}
            names={names}
            picked={picked}
            onPick={setPicked}
            ownParts={ownParts}
          />
          {last !== null && !find.invented && !visiting && (
            <last.WorkBegun
              id={find.id}
              known={known}
              appraisal={appraisal}
              course={planInSight(appraisal, picked)}
              fault={fault}
            />
          )}
          {faultsOutrunWork(appraisal) && findings}
          {listing}
        </div>
        <div class="b2">
          {last !== null && <last.UnseenPanel appraisal={appraisal} names={names} />}
          {appraisal.value !== null && (
            <ValuePanel
              value={appraisal.value}
              sellAt={sellAt}
              currency={appraisal.currency}
              price={price}
              paid={paid}
              dimmed={dimmed}
            />
          )}
          {appraisal.value !== null && (
            <PartsPanel
              value={appraisal.value}
              currency={appraisal.currency}
              names={names}
              inSight={planInSight(appraisal, picked)?.course === "break-for-parts"}
            />
          )}
          {!faultsOutrunWork(appraisal) && findings}
        </div>
      </div>
    </>
  );
}

/** Many faults and little work, as on most finds to leave: then the faults stand below the short plan, in the longer column. */
function faultsOutrunWork({ findings, courses, decision }: Appraisal): boolean {
  const faults = findings.filter(({ severity }) => severity > 0).length;
  const course = decision.course === "leave" ? bestOther(courses)?.course : decision.course;
  const work = courses.find((one) => one.course === course)?.plan?.operations.length ?? 0;
  return faults > 2 * work;
}
