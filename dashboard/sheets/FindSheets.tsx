import type { CourseOutcome } from "../api/types.ts";
import { namesIn } from "../find/names.ts";
import { isInvented } from "../finds/ownership.ts";
import { lengthUnit } from "../state/units.ts";
import { factsLine } from "../words/description.ts";
import { INVENTED, INVENTED_FIND, type SheetId } from "../words/sheets.ts";
import { InspectionSheet } from "./InspectionSheet.tsx";
import { inspectionSheet, toolsFor } from "./inspection.ts";
import { JobSheet } from "./JobSheet.tsx";
import type { PrintDialogProps } from "./PrintDialog.tsx";
import { ShoppingSheet } from "./ShoppingSheet.tsx";

interface FindSheetsProps extends Omit<PrintDialogProps, "onClose"> {
  readonly sheets: readonly SheetId[];
  /** Whose work is printed; undefined where there is none. */
  readonly course: CourseOutcome | undefined;
}

/** The sheets of a find that were chosen, each on paper of its own. */
export function FindSheets({ find, known, appraisal, body, ownParts, sheets, course }: FindSheetsProps) {
  const ofFind = isInvented(find) ? INVENTED_FIND : "";
  const stopped = appraisal.decision.stop !== null;
  const head = {
    bike: find.name,
    facts: factsLine(body, known, stopped ? null : appraisal.currency),
  };
  const plan = course?.plan ?? null;
  const seen = {
    observations: body.observations ?? {},
    findings: appraisal.findings,
    owed: appraisal.readiness.owed,
  };
  const groups = inspectionSheet(known, body.find, seen, lengthUnit.value);
  return (
    <>
      {sheets.includes("inspection") && (
        <InspectionSheet {...head} invented={ofFind} groups={groups} tools={toolsFor(known, groups)} />
      )}
      {sheets.includes("job") && course !== undefined && plan !== null && (
        <JobSheet
          {...head}
          invented={`${ofFind} ${INVENTED}`.trim()}
          appraisal={appraisal}
          course={course}
          plan={plan}
          known={known}
          names={namesIn(known)}
        />
      )}
      {sheets.includes("shopping") && plan !== null && (
        <ShoppingSheet
          {...head}
          invented={ofFind}
          list={plan.shoppingList}
          currency={appraisal.currency}
          known={known}
          body={body}
          lengths={lengthUnit.value}
          ownParts={ownParts}
        />
      )}
    </>
  );
}
