import { useState } from "preact/hooks";
import type { Appraisal, AppraisalBody, CourseId, Reference } from "../api/types.ts";
import { planInSight, plannedCourses } from "../courses/planInSight.ts";
import type { Find } from "../finds/find.ts";
import { Dialog } from "../parts/Dialog.tsx";
import { Picks } from "../parts/Picks.tsx";
import { COURSE_WORDS } from "../words/course.ts";
import {
  PRINT_BLANK,
  PRINT_COURSE,
  PRINT_PAPER,
  PRINT_TITLE,
  PRINT_WHICH,
  printLabel,
} from "../words/printDialog.ts";
import { SHEET_DETAILS, SHEETS, type SheetId } from "../words/sheets.ts";
import { FindSheets } from "./FindSheets.tsx";
import { printSheets } from "./printSheets.tsx";
import "../style/share.css";

export interface PrintDialogProps {
  readonly find: Find;
  readonly known: Reference;
  readonly appraisal: Appraisal;
  /** The question that was answered. */
  readonly body: AppraisalBody;
  readonly ownParts: ReadonlySet<string>;
  readonly onClose: () => void;
}

/** Which sheets of a find to print. Without work in the answer there is no job sheet and nothing to buy. */
export function PrintDialog(props: PrintDialogProps) {
  const { appraisal, onClose } = props;
  const planned = plannedCourses(appraisal);
  const [picked, setPicked] = useState<CourseId | null>(null);
  const course = planInSight(appraisal, picked);
  const buys = course?.plan != null && course.plan.shoppingList.length > 0;
  const offered: readonly SheetId[] = [
    "inspection",
    ...(course === undefined ? [] : (["job"] as const)),
    ...(buys ? (["shopping"] as const) : []),
  ];
  const [chosen, setChosen] = useState<readonly SheetId[]>(
    course === undefined ? ["inspection"] : ["job", "shopping"],
  );
  const sheets = offered.filter((sheet) => chosen.includes(sheet));
  const toggle = (sheet: SheetId) =>
    setChosen(chosen.includes(sheet) ? chosen.filter((one) => one !== sheet) : [...chosen, sheet]);
  const print = () => {
    printSheets(<FindSheets {...props} sheets={sheets} course={course} />);
    onClose();
  };
  return (
    <Dialog title={PRINT_TITLE} onClose={onClose}>
      <fieldset class="sheetpicks">
        <legend class="sr">{PRINT_WHICH}</legend>
        {offered.map((sheet) => (
          <label key={sheet} class="tick">
            <input type="checkbox" checked={sheets.includes(sheet)} onChange={() => toggle(sheet)} />
            <span>
              <b>{SHEETS[sheet]}</b>
              <span class="small">, {SHEET_DETAILS[sheet]}</span>
            </span>
          </label>
        ))}
      </fieldset>
      {planned.length > 1 && course !== undefined && (
        <Picks
          legend={PRINT_COURSE}
          choices={planned.map((one) => ({ value: one.course, label: COURSE_WORDS[one.course].name }))}
          value={course.course}
          onValue={(value) => setPicked(value as CourseId)}
          layout="grid"
        />
      )}
      <div class="acts">
        <button type="button" class="btn" disabled={sheets.length === 0} onClick={print}>
          {printLabel(sheets.length)}
        </button>
      </div>
      <p class="small">
        {PRINT_PAPER} <a href="/sheets">{PRINT_BLANK}</a>
      </p>
    </Dialog>
  );
}
