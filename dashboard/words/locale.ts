/** Where nothing is said of the user's locale. */
const PLAIN = "en-GB";

let tag = PLAIN;
/** Worked out when first asked for: the first figure a browser writes costs it a dozen milliseconds. */
let signs: Signs | null = null;

/** How a locale writes figures. */
interface Signs {
  /** Sets off the decimals. */
  readonly decimal: string;
  /** Sets off thousands. */
  readonly group: string;
}

/**
 * Figures, money and dates are written as the user's locale has it, from here on; the texts stay English, and so do the
 * digits. Called once, before anything is shown.
 * @param wished BCP 47 tags, best first, as `navigator.languages` has them
 */
export function writeFor(wished: readonly string[]): void {
  tag = supported(wished);
  signs = null;
}

/** The locale that figures, money and dates are written for: a BCP 47 tag, with the digits 0 to 9. */
export function locale(): string {
  return tag;
}

/** Whether figures and money read as they do where nothing is said of the locale. */
export function writesAlike(): boolean {
  const sample = (of: string) =>
    new Intl.NumberFormat(of, { style: "currency", currency: "EUR" }).format(-1_234_567.8);
  return tag === PLAIN || sample(tag) === sample(PLAIN);
}

/** The signs that the locale sets into figures. */
export function figureSigns(): Signs {
  signs ??= signsOf(tag);
  return signs;
}

function supported(wished: readonly string[]): string {
  for (const one of wished) {
    try {
      const [found] = Intl.NumberFormat.supportedLocalesOf(one);
      if (found !== undefined) return new Intl.Locale(found, { numberingSystem: "latn" }).toString();
    } catch {
      // A tag that is none says nothing: the next is asked.
    }
  }
  return PLAIN;
}

function signsOf(of: string): Signs {
  const parts = new Intl.NumberFormat(of).formatToParts(1_234_567.8);
  const part = (type: string) => parts.find((one) => one.type === type)?.value;
  return { decimal: part("decimal") ?? ".", group: part("group") ?? "," };
}
