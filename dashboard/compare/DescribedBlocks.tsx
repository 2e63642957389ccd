import { useMemo } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import {
  COMPARE_ALIKE,
  COMPARE_DESCRIBED,
  COMPARE_NOT_SAID,
  detailsAlike,
  detailsApart,
} from "../words/compareTexts.ts";
import type { Compared } from "./compared.ts";
import { type DescribedRow, describedRows } from "./described.ts";
import { Beside, Block } from "./MeasureSection.tsx";

/** What the finds are: where they differ first, what is the same for all folded away. */
export function DescribedBlocks({ finds, known }: { finds: readonly Compared[]; known: Reference }) {
  const { apart, same } = useMemo(
    () =>
      describedRows(
        finds.map(({ find }) => find.body),
        known,
      ),
    [finds, known],
  );
  const details = apart.filter(({ main }) => !main);
  const block = ({ label, values }: DescribedRow) => (
    <Block key={label} label={label} sub="">
      {finds.map(({ find }, i) => (
        <Beside key={find.id} name={find.name}>
          <span>{values[i] ?? <i>{COMPARE_NOT_SAID}</i>}</span>
        </Beside>
      ))}
    </Block>
  );
  return (
    <section class="panel described" aria-labelledby="described-title">
      <h2 id="described-title">{apart.length === 0 ? COMPARE_ALIKE : COMPARE_DESCRIBED}</h2>
      {apart.filter(({ main }) => main).map(block)}
      {details.length > 0 && (
        <details>
          <summary>{detailsApart(details.length)}</summary>
          {details.map(block)}
        </details>
      )}
      {same.length > 0 && (
        <details>
          <summary>{detailsAlike(same.length)}</summary>
          <SameList rows={same.map(({ label, values }) => ({ label, text: values[0] ?? "" }))} />
        </details>
      )}
    </section>
  );
}

/** What is the same for all finds, once for each line. */
export function SameList({ rows }: { rows: readonly { readonly label: string; readonly text: string }[] }) {
  return (
    <dl class="samelist">
      {rows.map(({ label, text }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
