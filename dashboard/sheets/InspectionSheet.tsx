import { F_AND_R, HOW_TO_FILL, SCREENS, SHEETS, sheetCount } from "../words/sheets.ts";
import {
  checkMinutes,
  MARK_FIRST,
  MARK_MADE,
  MARK_OWED,
  MARK_STOPS,
  takeAlong,
} from "../words/sheetTexts.ts";
import { Box } from "./Box.tsx";
import type { BlankRow, CheckGroup, CheckRow, TickRow, Wheel } from "./inspection.ts";
import { SheetHead } from "./SheetHead.tsx";

interface InspectionSheetProps {
  readonly bike: string;
  readonly facts: string;
  readonly invented: string;
  readonly groups: readonly CheckGroup[];
  readonly tools: readonly string[];
}

const LETTER: Readonly<Record<Wheel, string>> = { bike: "", front: "F", rear: "R" };

/** The checks of a bike to be filled in by hand, by group. */
export function InspectionSheet({ bike, facts, invented, groups, tools }: InspectionSheetProps) {
  const rows = groups.flatMap((group) => group.rows);
  const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
  const made = rows.filter((row) => row.made).length;
  const owed = rows.filter((row) => row.owed).length;
  return (
    <section class="inspection">
      <SheetHead title={SHEETS.inspection} bike={bike} facts={facts} invented={invented}>
        <p>
          {sheetCount(rows.length, minutes, made, owed)} {HOW_TO_FILL}{" "}
          {rows.some(({ wheels }) => wheels.length > 1) && F_AND_R}
        </p>
        {tools.length > 0 && <p>{takeAlong(tools)}</p>}
      </SheetHead>
      {groups.map(({ name, rows: checks }) => (
        <div key={name} class="checkgroup">
          <h2>{name}</h2>
          {checks.map((row) => (
            <CheckOnPaper key={row.id} row={row} />
          ))}
        </div>
      ))}
      <p>{SCREENS}</p>
    </section>
  );
}

function CheckOnPaper({ row }: { row: CheckRow }) {
  return (
    <div class="checkrow">
      <h3>
        {row.name}
        {row.first && <span class="mark">{MARK_FIRST}</span>}
        {row.owed && <span class="mark strong">{MARK_OWED}</span>}
        {row.made && <span class="mark">{MARK_MADE}</span>}
        <span class="minutes">{checkMinutes(row.minutes)}</span>
      </h3>
      <p class="howto">{row.how}</p>
      {row.blanks.map((blank) => (
        <Figures key={blank.id} blank={blank} wheels={row.wheels} />
      ))}
      <ul class="boxlist">
        {row.levels.map((level) => (
          <Level key={level.id} level={level} wheels={row.wheels} />
        ))}
      </ul>
    </div>
  );
}

function Level({ level, wheels }: { level: TickRow; wheels: readonly Wheel[] }) {
  return (
    <li>
      {wheels.map((wheel) => (
        <Box key={wheel} of={LETTER[wheel]} ticked={level.ticked.includes(wheel)} />
      ))}
      <span>
        {level.words}
        {level.stops && <b class="stops"> {MARK_STOPS}</b>}
      </span>
    </li>
  );
}

function Figures({ blank, wheels }: { blank: BlankRow; wheels: readonly Wheel[] }) {
  return (
    <p class="figures">
      <span>{blank.label}</span>
      {wheels.map((wheel) => (
        <span key={wheel} class="fill">
          {LETTER[wheel]} <span class="rule">{blank.filled[wheel] ?? ""}</span> {blank.unit}
        </span>
      ))}
    </p>
  );
}
