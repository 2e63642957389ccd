import { useState } from "preact/hooks";
import type { AttributeName, Reference } from "../api/types.ts";
import { Heading } from "../parts/Heading.tsx";
import { Choose } from "../parts/Picks.tsx";
import { InspectionSheet } from "../sheets/InspectionSheet.tsx";
import { inspectionSheet, NOTHING_SEEN, toolsFor } from "../sheets/inspection.ts";
import { printSheets } from "../sheets/printSheets.tsx";
import { reference } from "../state/reference.ts";
import { lengthUnit } from "../state/units.ts";
import {
  BLANK_SHEET_FACTS,
  BLANK_SHEET_KIND,
  BLANK_SHEET_PRINT,
  BLANK_SHEET_WHICH,
} from "../words/blankSheet.ts";
import { describedKind } from "../words/description.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { sheetCount } from "../words/sheets.ts";
import { Waiting } from "./findStates.tsx";
import "../style/share.css";

/** What decides which checks apply, in the order it is seen on a bike. */
const ASKED = ["category", "era", "frameMaterial", "componentTier", "drivetrain", "brakeType"] as const;

/** A blank inspection sheet for a kind of bike, to take along before there is a find. */
export function SheetsPage() {
  const known = reference.value;
  return known === null ? <Waiting /> : <Blank known={known} />;
}

function Blank({ known }: { known: Reference }) {
  const [attributes, setAttributes] = useState<Partial<Record<AttributeName, string>>>({});
  const groups = inspectionSheet(known, attributes, NOTHING_SEEN, lengthUnit.value);
  const rows = groups.flatMap((group) => group.rows);
  const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
  const kind = attributes.category === undefined ? "" : describedKind(attributes, known);
  const put = (name: AttributeName, value: string | undefined) => {
    const { [name]: _, ...rest } = attributes;
    setAttributes(value === undefined ? rest : { ...rest, [name]: value });
  };
  const print = () =>
    printSheets(
      <InspectionSheet bike={kind} facts="" invented="" groups={groups} tools={toolsFor(known, groups)} />,
    );
  return (
    <main class="page" id="main">
      <p class="crumb">
        <a href="/">{PLACE_NAMES.finds}</a> / {PLACE_NAMES.sheets}
      </p>
      <Heading title={PLACE_NAMES.sheets}>{BLANK_SHEET_WHICH}</Heading>
      <p class="facts">{BLANK_SHEET_FACTS}</p>
      <section class="panel later" aria-labelledby="blank-title">
        <h2 id="blank-title">{kind === "" ? BLANK_SHEET_KIND : sheetCount(rows.length, minutes, 0, 0)}</h2>
        <div class="fields">
          {ASKED.map((name) => (
            <Choose
              key={name}
              label={known.attributeLabels[name]}
              choices={known.attributes[name]}
              value={attributes[name]}
              onValue={(value) => put(name, value)}
            />
          ))}
        </div>
        {kind !== "" && (
          <p class="sheetact">
            <button type="button" class="btn" onClick={print}>
              {BLANK_SHEET_PRINT}
            </button>
          </p>
        )}
      </section>
    </main>
  );
}
