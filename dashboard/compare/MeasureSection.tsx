import type { ComponentChildren } from "preact";
import { useId, useMemo } from "preact/hooks";
import { hardlyLooked } from "../courses/standing.ts";
import { COMPARE_NO_FIGURE } from "../words/compareTexts.ts";
import { CellBar } from "./CellBar.tsx";
import { cellScale } from "./cellScale.ts";
import type { Compared } from "./compared.ts";
import type { MeasureRow } from "./measures.ts";

/** One measure for all finds: beside each other where there is room, else below each other. */
export function MeasureSection({ row, finds }: { row: MeasureRow; finds: readonly Compared[] }) {
  const { measure, cells } = row;
  const scale = useMemo(() => cellScale(row), [row]);
  return (
    <Block label={measure.label} sub={measure.sub}>
      {finds.map((compared, i) => {
        const cell = cells[i] ?? null;
        return (
          <Beside key={compared.find.id} name={compared.find.name}>
            {cell === null ? (
              <span class="nofigure">{COMPARE_NO_FIGURE}</span>
            ) : (
              <>
                <CellBar
                  cell={cell}
                  drawn={measure.drawn}
                  scale={scale}
                  open={hardlyLooked(compared.appraisal)}
                />
                <span class={measure.stacked ? "stacked" : ""}>
                  <b>{unbroken(cell.strong)}</b> <span>{unbroken(cell.rest)}</span>
                </span>
              </>
            )}
          </Beside>
        );
      })}
    </Block>
  );
}

/** A minus sign stays with its amount. */
const unbroken = (text: string) => text.replaceAll("\u2212", "\u2212\u2060");

/** A block of the comparison: its name, then one cell for each find. */
export function Block(props: { label: string; sub: string; children: ComponentChildren }) {
  const id = useId();
  return (
    <section class="meas" aria-labelledby={id}>
      <h3 id={id}>
        {props.label} {props.sub !== "" && <span class="small">{props.sub}</span>}
      </h3>
      <ul class="cells">{props.children}</ul>
    </section>
  );
}

/** What a block says of one find. */
export function Beside({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <li class="cell">
      <span class="who">{name}</span>
      <div class="val">{children}</div>
    </li>
  );
}
