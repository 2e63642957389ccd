/** Texts of the page on the stand, that hold no figure. */
export const STAND_TEXTS = {
  intoACopy: "What you answer here goes into a copy of your own; the invented find stays.",
  wholeAnswer: "The whole answer",
  nextHere: "Next here",
  needsApart: "What needs the bike taken apart waits for its job below.",
  goOnOwed: "Go on with what is owed",
  onceApart: ", once it is apart",
  owed: "owed",
  showFewer: "Show fewer",
  find: "Find a check",
  noneFound: "No check here has that word.",
  untilTold: "Until it is, what it was to settle stands as before.",
} as const;
/** What is said of a look in the list of its group. */
export const LOOK_STATE = {
  refused: "refused",
  cantTell: "can\u2019t tell",
  notLooked: "not looked at",
  onTheLine: "on the line",
  cured: "cured since",
  takenBack: "taken back",
} as const;
/** How the stand behaves. */
export const CONTROL_TEXTS = {
  all: "Buttons, keys and lengths",
  gloves: "Gloves on: larger buttons",
  lengths: "Lengths in",
  keys: "Keys",
} as const;
/** What a look takes and is worth, each with its name. */
export const WORTH_NAMES = {
  takes: "takes",
  worth: "worth, less your time",
  owed: "owed",
  couldTurn: "could turn into",
} as const;

/** "On the stand: the grey one". */
export function onTheStand(name: string): string {
  return `On the stand: ${name}`;
}

/** "the grey one on the stand", in the tab of the browser. */
export function standTab(name: string): string {
  return `${name} on the stand`;
}

/** "All 40 checks of this bike". */
export function allChecks(n: number): string {
  return `All ${n} checks of this bike`;
}

/** "3 found", or that none was, for what is looked for among the checks. */
export function foundWords(n: number): string {
  return n === 0 ? STAND_TEXTS.noneFound : `${n} found`;
}

/** "Show all 12". */
export function showAll(n: number): string {
  return `Show all ${n}`;
}

/** "Chain elongation: can’t tell": what was said of a check, or of the tyre's marking. */
export function saidOf(name: string, said: string): string {
  return `${name}: ${said}`;
}

/** "(front and rear)", after the name of a job; empty where it is at no wheel. */
export function atWheels(positions: readonly string[]): string {
  return positions.length === 0 ? "" : `(${positions.join(" and ")})`;
}
