import type { ComponentChild } from "preact";
import { render } from "preact";
import "./sheets.css";

const PRINTING = "printing-sheets";

/** Prints sheets, and nothing else of the page; they leave it again once the print dialogue has closed. */
export function printSheets(sheets: ComponentChild): void {
  document.querySelector(".sheets")?.remove();
  const place = document.createElement("div");
  place.className = "sheets";
  document.body.append(place);
  render(sheets, place);
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
