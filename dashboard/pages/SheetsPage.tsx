import { useState } from "preact/hooks";
import type { AttributeName, Reference } from "../api/types.ts";
import { Heading } from "../parts/Heading.tsx";
import { Choose } from "../parts/Picks.tsx";
import { InspectionSheet } from "../sheets/InspectionSheet.tsx";
import { inspectionSheet, NOTHING_SEEN, toolsFor } from "../sheets/inspection.ts";
import { printSheets } from "../sheets/printSheets.tsx";
import { reference } from "../state/reference.ts";
import { lengthUnit } from "../state/units.ts";
import { describedKind } from "../words/description.ts";
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
        <a href="/">Finds</a> / Blank inspection sheet
      </p>
      <Heading title="Blank inspection sheet">Which bike will you look at?</Heading>
      <p class="facts">
        The sheet holds the checks that apply to it, to fill in by hand. What you leave open is taken as it
        mostly is on such a bike.
      </p>
      <section class="panel later" aria-labelledby="blank-title">
        <h2 id="blank-title">{kind === "" ? "What kind is it?" : sheetCount(rows.length, minutes, 0, 0)}</h2>
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
              Print the sheet
            </button>
          </p>
        )}
      </section>
    </main>
  );
}
