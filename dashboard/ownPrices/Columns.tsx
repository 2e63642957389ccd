import { type Column, NOTE, priceBookColumns, saleColumns } from "./columns.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What stands in each column of the two kinds of file. */
export function Columns({ vocabulary }: { vocabulary: Vocabulary }) {
  return (
    <details class="columns">
      <summary>Columns</summary>
      <p class="small">
        Columns may stand in any order, and those that are not needed may be missing. An empty cell is
        unknown. A decimal comma is read where commas do not separate the cells. "{NOTE}" is for your own
        remarks and is not read. At most 5,000 sales are kept.
      </p>
      <ColumnTable caption="Sales" columns={saleColumns(vocabulary)} />
      <ColumnTable caption="Price book" columns={priceBookColumns(vocabulary)} />
      <details>
        <summary>Parts by id and name</summary>
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
          <th scope="col">Column</th>
          <th scope="col">What stands in it</th>
        </tr>
      </thead>
      <tbody>
        {columns.map(({ name, needed, meaning, values }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              {needed && <span class="tag">needed</span>}
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
