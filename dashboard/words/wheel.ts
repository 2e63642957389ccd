/** The wheel in a sentence: how many groups of checks were looked at in full, and how many still have one open. */
export function wheelSentence(full: number, of: number, open: number): string {
  return `Looked at: ${full} of ${of} groups of checks in full, ${open} still open.`;
}
