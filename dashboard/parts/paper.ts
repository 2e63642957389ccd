import { type ComponentChildren, render } from "preact";

const PRINTING = "printing-sheets";

/** A place for sheets of paper, apart from the page. */
export interface Paper {
  /** Stands in the page, unseen; its colours are those of paper. */
  readonly place: HTMLElement;
  /** Prints sheets, and nothing else of the page; they leave it again once the print dialogue has closed. */
  print(sheets: ComponentChildren): void;
}

/** Takes a new sheet; one that lies there still is thrown away. */
export function takePaper(): Paper {
  document.querySelector(".sheets")?.remove();
  const place = document.createElement("div");
  place.className = "sheets";
  document.body.append(place);
  return {
    place,
    print(sheets) {
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
    },
  };
}
