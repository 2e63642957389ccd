/** Texts of the page on the stand, that hold no figure. */
export const STAND_INTO_A_COPY =
  "What you answer here goes into a copy of your own; the invented find stays.";
export const STAND_WHOLE_ANSWER = "The whole answer";
export const STAND_NEXT_HERE = "Next here";
export const STAND_NEEDS_APART = "What needs the bike taken apart waits for its job below.";
export const STAND_GO_ON_OWED = "Go on with what is owed";
export const STAND_ONCE_APART = ", once it is apart";
export const STAND_OWED = "owed";
export const STAND_SHOW_FEWER = "Show fewer";
export const STAND_FIND = "Find a check";
export const STAND_UNTIL_TOLD = "Until it is, what it was to settle stands as before.";
/** What a look takes and is worth, each with its name. */
export const WORTH_TAKES = "takes";
export const WORTH_LESS_TIME = "worth, less your time";
export const WORTH_OWED = "owed";
export const WORTH_COULD_TURN = "could turn into";

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
  return n === 0 ? "No check here has that word." : `${n} found`;
}

/** "Show all 12". */
export function showAll(n: number): string {
  return `Show all ${n}`;
}

/** "(front and rear)", after the name of a job; empty where it is at no wheel. */
export function atWheels(positions: readonly string[]): string {
  return positions.length === 0 ? "" : `(${positions.join(" and ")})`;
}
