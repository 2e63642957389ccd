import { signal } from "@preact/signals";

/** A newer version of the pages, or of the prices and rules that the server works with; and how to take it in. */
export interface Newer {
  /** pages: all of it lies ready in this browser; server: the server works with other prices or rules than these pages. */
  readonly what: "pages" | "server";
  /** Loads the page anew with it. Only ever called because the user asked. */
  readonly take: () => void;
}

export const newer = signal<Newer | null>(null);
