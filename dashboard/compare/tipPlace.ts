/** Where the box that tells about a column stands: beside the bar, turned to the left from the middle on. */
export function tipPlace(column: number, of: number): { left: string } | { right: string } {
  return column < of / 2
    ? { left: `calc(${(column / of) * 100}% + 4.5rem)` }
    : { right: `calc(${100 - (column / of) * 100}% - 1rem)` };
}
