/** Over the finds of one's own that lack one of the four picks. */
export const NOT_FAR_ENOUGH = "Not described far enough to work out";
/** What went wrong with keeping finds in the browser. */
export const FINDS_TROUBLE_UNREADABLE =
  "What this browser kept of your own finds could not be read. You start afresh.";
export const FINDS_TROUBLE_UNKEPT =
  "This browser keeps nothing for this page: your own finds last until you close it.";
