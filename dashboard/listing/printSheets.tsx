import { render } from "preact";
import type { Say } from "./catalogue.ts";
import type { Draft } from "./draft.ts";
import { Sheets } from "./Sheets.tsx";

const PRINTING = "printing-sheets";

/** Prints the sheets of a draft, and nothing else of the page; they leave it again once the print dialogue has closed. */
export function printSheets(draft: Draft, text: string, say: Say): void {
  document.querySelector(".sheets")?.remove();
  const place = document.createElement("div");
  place.className = "sheets";
  document.body.append(place);
  render(<Sheets draft={draft} text={text} say={say} />, place);
  document.documentElement.classList.add(PRINTING);
  addEventListener(
    "afterprint",
    () => {
      document.documentElement.classList.remove(PRINTING);
      render(null, place);
      place.remove();
    },
    { once: true },
  );
  print();
}
