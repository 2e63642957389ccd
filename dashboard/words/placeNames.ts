/** What the pages are called: in the masthead, in the tab of the browser, in links to them. */
export const PLACE_NAMES = {
  finds: "Finds",
  find: "A find",
  listing: "What to ask",
  stand: "On the stand",
  describe: "Describe a find",
  spot: "On the spot",
  prices: "Your prices",
  compare: "Side by side",
  together: "Which together",
  selling: "Selling",
  shared: "A shared find",
  sheets: "Blank inspection sheet",
} as const;
/** The link home where a page has nothing else to offer. */
export const TO_THE_FINDS = "To the finds";

/** What the tab of the browser says. */
export function tabTitle(title: string): string {
  return `${title} \u00b7 Spokeworth`;
}

/** Where an address names a find that is not kept in this browser. */
export const NO_SUCH_FIND_TITLE = "No such find";
