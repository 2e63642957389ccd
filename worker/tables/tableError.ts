/** Where a table is wrong: the file under data/, the row by its id or index, the field, what it requires, and what was found. */
export class TableError extends Error {
  readonly file: string;
  readonly row: string | number | null;
  readonly field: string;
  readonly requirement: string;

  /** @param row null where the file is one object */
  constructor(file: string, row: string | number | null, field: string, requirement: string) {
    const place = row === null ? file : `${file}, row ${row}`;
    super(`${place}: ${field} requires ${requirement}`);
    this.name = "TableError";
    this.file = file;
    this.row = row;
    this.field = field;
    this.requirement = requirement;
  }
}
