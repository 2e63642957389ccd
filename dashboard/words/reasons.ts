/** "More reasons (3)", on the fold that holds them. */
export function moreReasons(n: number): string {
  return `More reasons (${n})`;
}
