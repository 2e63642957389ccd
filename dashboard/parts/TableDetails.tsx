import { AS_A_TABLE } from "../words/common.ts";
import { unbroken } from "../words/unbroken.ts";

/** The figures of a chart as a table, folded. */
export function TableDetails({
  caption,
  head,
  rows,
}: {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
}) {
  return (
    <details class="astable">
      <summary>{AS_A_TABLE}</summary>
      {/* Wider than a phone: the keyboard scrolls it too. */}
      <section
        class="scrolled"
        aria-label={caption}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must take the focus
        tabIndex={0}
      >
        <table>
          <caption class="sr">{caption}</caption>
          <thead>
            <tr>
              {head.map((cell) => (
                <th key={cell} scope="col">
                  {cell}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, ...cells]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {cells.map((cell, i) => (
                  <td key={head[i + 1]}>{unbroken(cell)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
