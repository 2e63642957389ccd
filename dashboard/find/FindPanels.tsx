import type { Appraisal, Reference } from "../api/types.ts";
import { FindWheel } from "../finds/FindWheel.tsx";
import type { Find } from "../finds/find.ts";
import { Warning } from "../signs/Warning.tsx";
import { CoursesPanel } from "./CoursesPanel.tsx";
import { namesIn } from "./names.ts";
import { PlanPanel } from "./PlanPanel.tsx";
import { Reasons } from "./Reasons.tsx";
import { CautionsPanel, FindingsPanel, ReadinessPanel } from "./SeenPanels.tsx";
import { ValuePanel } from "./ValuePanel.tsx";
import { VerdictPanel } from "./VerdictPanel.tsx";

interface FindPanelsProps {
  readonly find: Find;
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly goal: number;
  readonly price: number | undefined;
  readonly paid: boolean;
  readonly dimmed: boolean;
}

/** Everything about one find, in the order it matters: the verdict, what warns, the courses, the work, the prices, what was seen. */
export function FindPanels(props: FindPanelsProps) {
  const { find, known, appraisal, goal: hourlyGoal, price, paid, dimmed } = props;
  const names = namesIn(known);
  const wheel = <FindWheel find={find} reference={known} size={132} />;
  if (appraisal.decision.stop !== null) {
    return (
      <div class="halted">
        <Halt appraisal={appraisal} />
        <CautionsPanel appraisal={appraisal} />
        <FindingsPanel appraisal={appraisal} names={names} wheel={wheel} />
      </div>
    );
  }
  return (
    <>
      <VerdictPanel appraisal={appraisal} goal={hourlyGoal} price={price} paid={paid} />
      <div class="two">
        <div class="b1">
          <CautionsPanel appraisal={appraisal} />
          <ReadinessPanel appraisal={appraisal} names={names} />
        </div>
        <div class="a">
          <CoursesPanel appraisal={appraisal} goal={hourlyGoal} dimmed={dimmed} />
          <PlanPanel appraisal={appraisal} names={names} />
        </div>
        <div class="b2">
          {appraisal.value !== null && (
            <ValuePanel
              value={appraisal.value}
              currency={appraisal.currency}
              price={price}
              paid={paid}
              dimmed={dimmed}
            />
          )}
          <FindingsPanel appraisal={appraisal} names={names} wheel={wheel} />
        </div>
      </div>
    </>
  );
}

/** A hard stop comes before money, and then there is none. */
function Halt({ appraisal }: { appraisal: Appraisal }) {
  return (
    <Warning kind="stop">
      <b>While this stands, no figure is worked out.</b>
      <Reasons reasons={appraisal.decision.reasons} currency={appraisal.currency} />
    </Warning>
  );
}
