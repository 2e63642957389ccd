/** Comes in a task of its own: between two of them the page answers, and is drawn. */
export function ownTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
