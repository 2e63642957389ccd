import { takePaper } from "../parts/paper.ts";
import type { Say } from "./catalogue.ts";
import type { Draft } from "./draft.ts";
import { Sheets } from "./Sheets.tsx";

/** Prints the sheets of a draft. */
export function printSheets(draft: Draft, text: string, say: Say): void {
  takePaper().print(<Sheets draft={draft} text={text} say={say} />);
}
