import { useRef, useState } from "preact/hooks";
import { PlaneLayer, type PlaneSpec } from "../charts/PlaneLayer.tsx";
import { isInvented } from "../finds/ownership.ts";
import { handOver } from "../ownPrices/download.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { go } from "../state/route.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { PLANE_CHOSEN, PLANE_NO_PICTURE, PLANE_SAVE, pictureNote } from "../words/togetherPlanes.ts";
import { keyWords } from "../words/togetherSet.ts";
import type { SetRow } from "./setRows.ts";

interface PlanePanelProps {
  /** Names the panel and the file of its picture. */
  readonly id: string;
  readonly title: string;
  readonly lines: readonly string[];
  readonly spec: PlaneSpec;
  /** The finds on the chart, in the order of its marks. */
  readonly rows: readonly SetRow[];
  readonly tellings: readonly (readonly string[])[];
  readonly table: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };
  readonly dimmed: boolean;
}

/** A chart with its finding, its finds by number, its table, and its picture to keep. */
export function PlanePanel({ id, title, lines, spec, rows, tellings, table, dimmed }: PlanePanelProps) {
  const panel = useRef<HTMLElement>(null);
  const [failed, setFailed] = useState(false);
  const key = rows.map(({ number, find, shown, chosen }) => ({
    sign: COURSE_PATH[shown.course],
    token: COURSE_TOKEN[shown.course],
    text: keyWords(number, find.name, COURSE_WORDS[shown.course].name, chosen),
  }));
  const save = async () => {
    if (panel.current === null) return;
    try {
      const { pictureOf } = await import("../charts/picture.ts");
      const told = { title, lines, key, note: noteFor(rows), spec };
      handOver(`${id}.png`, await pictureOf(told, panel.current));
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  return (
    <section ref={panel} class="panel planepanel" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      {lines.map((line) => (
        <p key={line} class="small">
          {line}
        </p>
      ))}
      <PlaneLayer
        spec={spec}
        tellings={rows.map(({ find }, i) => ({ title: find.name, lines: tellings[i] ?? [] }))}
        dimmed={dimmed}
        onPick={(i) => {
          const row = rows[i];
          if (row !== undefined) go(`/finds/${encodeURIComponent(row.find.id)}`);
        }}
      />
      <ol class="planekey">
        {rows.map(({ find, number, shown, chosen }) => (
          <li key={find.id} class={chosen ? "in" : ""}>
            <span class="setnumber">{number}</span>
            <CourseSign course={shown.course} />
            <span>
              {find.name}
              <span class="sr">, {COURSE_WORDS[shown.course].name}</span>
              {chosen && PLANE_CHOSEN}
            </span>
          </li>
        ))}
      </ol>
      <div class="links">
        <button type="button" class="plainbtn" onClick={() => void save()}>
          {PLANE_SAVE}
          <span class="sr">: {title}</span>
        </button>
      </div>
      {failed && (
        <p class="wrong" role="alert">
          {PLANE_NO_PICTURE}
        </p>
      )}
      <TableDetails caption={title} head={table.head} rows={table.rows} />
    </section>
  );
}

function noteFor(rows: readonly SetRow[]): string {
  return pictureNote(rows.some(({ find }) => isInvented(find)));
}
