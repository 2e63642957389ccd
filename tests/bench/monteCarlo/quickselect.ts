/**
 * Puts the values that sorting would put at some places there (Hoare 1961, the pivot the middle of three), without sorting the rest. Mean time is linear.
 * @param values changed in place; no NaN
 * @param places rising
 */
export function selectPlaces(values: Float64Array, places: readonly number[]): void {
  let from = 0;
  for (const place of places) {
    selectPlace(values, from, values.length - 1, place);
    from = place + 1;
  }
}

function selectPlace(values: Float64Array, from: number, to: number, place: number): void {
  let low = from;
  let high = to;
  while (low < high) {
    const pivot = middleOf(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const kept = values[i]!;
      values[i] = values[j]!;
      values[j] = kept;
      i++;
      j--;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else return;
  }
}

function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
