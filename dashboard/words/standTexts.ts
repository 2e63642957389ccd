import { capital } from "./count.ts";

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
export const STAND_NONE_FOUND = "No check here has that word.";
export const STAND_UNTIL_TOLD = "Until it is, what it was to settle stands as before.";
/** What is said of a look in the list of its group. */
export const LOOK_STATE_REFUSED = "refused";
export const LOOK_STATE_CANT_TELL = "can\u2019t tell";
export const LOOK_STATE_NOT_LOOKED = "not looked at";
export const LOOK_STATE_ON_THE_LINE = "on the line";
export const LOOK_STATE_CURED = "cured since";
export const LOOK_STATE_TAKEN_BACK = "taken back";
/** How the stand behaves. */
export const CONTROL_ALL = "Buttons, keys and lengths";
export const CONTROL_GLOVES = "Gloves on: larger buttons";
export const CONTROL_LENGTHS = "Lengths in";
export const CONTROL_KEYS = "Keys";
/** What a look takes and is worth, each with its name. */
export const WORTH_TAKES = "takes";
export const WORTH_WORTH = "worth, less your time";
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
  return n === 0 ? STAND_NONE_FOUND : `${n} found`;
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

/** "Front: on the line: measure again."; without a wheel "On the line: measure again." */
export function measureAgain(wheel: "front" | "rear" | null): string {
  return `${wheel === null ? "On" : `${capital(wheel)}: on`} the line: measure again.`;
}

/** What a reading on the line is taken as: "Until then it counts as slight." */
export function countsAs(level: string): string {
  return `Until then it counts as ${level}.`;
}

export const LOOK_KEYS_AND_FIND = "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo, / find";
