/** What came of putting a text on the clipboard. */
export const COPIED = "Copied.";
export const NOT_COPIED =
  "This browser does not let the page copy. The text is selected: copy it with the keyboard or the menu.";
