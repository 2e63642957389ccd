/** Texts of the page with one's own prices. */
export const PRICES_FACTS =
  "What bicycles fetched where you sell, and what parts cost you. What you enter stays in this browser; it goes along with each question that the server works out.";
/** What went wrong with keeping them. */
export const PRICES_TROUBLE_UNREADABLE =
  "What this browser kept of your own prices could not be read. You start afresh.";
export const PRICES_TROUBLE_UNKEPT =
  "This browser could not keep your own prices: they last until you close this page. Download them.";
