/** A file that is kept in the browser: its address, and a hash of its content, or null where the address holds one. */
export interface PrecachedFile {
  readonly url: string;
  readonly revision: string | null;
}

/** What the page tells a new version that waits: that the user wants it now. */
export const TAKE_OVER = "take over";
