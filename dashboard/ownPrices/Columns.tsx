import {
  COLUMN_MEANING,
  COLUMN_NAME,
  COLUMN_NEEDED,
  COLUMN_PARTS,
  COLUMN_PRICES,
  COLUMN_SALES,
  COLUMN_TITLE,
  columnFacts,
} from "../words/priceFiles.ts";
import { type Column, NOTE, priceBookColumns, saleColumns } from "./columns.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What stands in each column of the two kinds of file. */
export function Columns({ vocabulary }: { vocabulary: Vocabulary }) {
  return (
    <details class="columns">
      <summary>{COLUMN_TITLE}</summary>
      <p class="small">{columnFacts(NOTE)}</p>
      <ColumnTable caption={COLUMN_SALES} columns={saleColumns(vocabulary)} />
      <ColumnTable caption={COLUMN_PRICES} columns={priceBookColumns(vocabulary)} />
      <details>
        <summary>{COLUMN_PARTS}</summary>
        <ul class="pairs">
          {vocabulary.parts.map(({ id, name, unit }) => (
            <li key={id}>
              <span>
                <code>{id}</code> {name}
              </span>
              <span>{unit}</span>
            </li>
          ))}
        </ul>
      </details>
    </details>
  );
}

function ColumnTable<Row>({ caption, columns }: { caption: string; columns: readonly Column<Row>[] }) {
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{COLUMN_NAME}</th>
          <th scope="col">{COLUMN_MEANING}</th>
        </tr>
      </thead>
      <tbody>
        {columns.map(({ name, needed, meaning, values }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              {needed && <span class="tag">{COLUMN_NEEDED}</span>}
            </th>
            <td>
              {meaning}
              {values.length > 0 && <span class="valuelist">{values.join(", ")}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
