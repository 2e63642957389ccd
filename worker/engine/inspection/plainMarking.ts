const FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** A marking as it is taken apart: capitals, X for every multiplication sign, fractions with a slash, a point for the decimal comma, no inch signs. */
export function plainMarking(marking: string): string {
  return marking
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]} `)
    .toUpperCase()
    .replace(/[×*]/g, "X")
    .replace(/[–—]/g, "-")
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/(\d)[-.](\d{1,2}\/\d)/g, "$1 $2")
    .replace(/["″”]|''/g, " ")
    .replace(/(\d)\s*(INCHES|INCH|IN|ER)\b/g, "$1 ")
    .replace(/\s+/g, " ")
    .trim();
}
