/** What a chart is called where its role is spoken. */
export const CHART = "chart";

/** A chart's sentence, with how its marks are reached by keys. */
export function withKeys(label: string): string {
  return `${label} Arrow keys move between the marks.`;
}
