/** The same inside a sentence: "in 3 of 10", "in fewer than 1 of 20". */
export function outOf(probability: number, of: 10 | 20): string {
  return `in ${chance(probability, of).replace(" in ", " of ")}`;
}

/** A probability as n in `of`, never rounded to a certainty that is not there: "3 in 10", "fewer than 1 in 20". */
export function chance(probability: number, of: 10 | 20): string {
  const n = Math.round(probability * of);
  if (n === 0 && probability > 0) return `fewer than 1 in ${of}`;
  if (n === of && probability < 1) return `more than ${of - 1} in ${of}`;
  return `${n} in ${of}`;
}
