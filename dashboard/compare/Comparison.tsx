import { useMemo } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { hardlyLooked } from "../courses/standing.ts";
import { CopyButton } from "../find/CopyButton.tsx";
import { MarginChart } from "../finds/MarginChart.tsx";
import { RateTable } from "../finds/RateTable.tsx";
import { Warning } from "../signs/Warning.tsx";
import { MARGIN_PER_HOUR, MARK_AND_BAR } from "../words/common.ts";
import {
  COMPARE_SAME,
  COMPARE_WHAT_IF,
  COMPARE_WHAT_IF_HOW,
  hardlyLookedAt,
  openChecks,
} from "../words/compareTexts.ts";
import { HatchPattern } from "./CellBar.tsx";
import { type Compared, calledIn } from "./compared.ts";
import { SameList } from "./DescribedBlocks.tsx";
import { differencesFirst } from "./differences.ts";
import { Heads } from "./Heads.tsx";
import { Beside, Block, MeasureSection } from "./MeasureSection.tsx";
import { measureRows } from "./measures.ts";
import { RateColumns } from "./RateColumns.tsx";

interface ComparisonProps {
  readonly finds: readonly Compared[];
  readonly goal: number;
  readonly known: Reference;
  readonly dimmed: boolean;
  /** A column for each find; else each measure lists the finds. */
  readonly wide: boolean;
}

/** The figures of the finds: margin per hour on top, then the rows in which they differ most, what is the same for all last. */
export function Comparison({ finds, goal, known, dimmed, wide }: ComparisonProps) {
  const { currency } = known;
  const rows = useMemo(() => finds.flatMap(({ row }) => (row === null ? [] : [row])), [finds]);
  const { apart, same } = useMemo(() => differencesFirst(measureRows(finds, known)), [finds, known]);
  return (
    <>
      <HatchPattern />
      {wide && <Heads finds={finds} known={known} />}
      {rows.length > 0 && wide && (
        <>
          <RateColumns finds={finds} goal={goal} currency={currency} dimmed={dimmed} />
          <RateTable rows={rows} goal={goal} currency={currency} />
        </>
      )}
      {rows.length > 0 && !wide && (
        <>
          <h3>{MARGIN_PER_HOUR}</h3>
          <p class="small">{MARK_AND_BAR}</p>
          <MarginChart rows={rows} goal={goal} currency={currency} reference={known} dimmed={dimmed} />
        </>
      )}
      {apart.map((row) => (
        <MeasureSection key={row.measure.id} row={row} finds={finds} />
      ))}
      {same.length > 0 && (
        <section class="meas same" aria-labelledby="same-title">
          <h3 id="same-title">{COMPARE_SAME}</h3>
          <SameList
            rows={same.map(({ measure, cells }) => {
              const { strong = "", rest = "" } = cells.find((one) => one !== null) ?? {};
              const joint = measure.stacked && rest !== "" ? ": " : " ";
              return { label: measure.label, text: `${strong}${joint}${rest}`.trim() };
            })}
          />
        </section>
      )}
      <Block label={COMPARE_WHAT_IF} sub={COMPARE_WHAT_IF_HOW}>
        {finds.map(({ find }) => (
          <Beside key={find.id} name={find.name}>
            <CopyButton find={find} among />
          </Beside>
        ))}
      </Block>
    </>
  );
}

/** Finds of which fewer than half of the checks were made: their figures will move. */
export function HardlyLooked({ finds }: { finds: readonly Compared[] }) {
  const open = finds.filter(({ stopped, appraisal }) => !stopped && hardlyLooked(appraisal));
  if (open.length === 0) return null;
  return (
    <div class="warnings">
      {open.map(({ find, appraisal: { looked } }) => (
        <Warning key={find.id} kind="mind">
          <b>{hardlyLookedAt(calledIn(find))}</b> {openChecks(looked)}
        </Warning>
      ))}
    </div>
  );
}
