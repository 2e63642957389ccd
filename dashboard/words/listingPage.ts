/** Texts of the page about what to ask for a find. */
export const WHEN_DOWN = "When to come down, what to take";

/** "What to ask: the grey one", in the tab of the browser. */
export function askTitle(name: string): string {
  return `What to ask: ${name}`;
}
