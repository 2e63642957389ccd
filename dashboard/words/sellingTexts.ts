/** Texts of the page with the plan of prices, that hold no figure. */
export const PLAN_NO_PLAN = "No price plan yet.";
export const PLAN_NOT_TO_BE_SOLD = "Not to be sold as things stand.";
export const PLAN_NOT_WHOLE = "It cannot be sold whole.";
export const PLAN_COMES_TO = "What it comes to";
export const PLAN_TERMS = "Terms";
export const PLAN_LISTED_ON = "Listed on (week 1 begins)";
export const PLAN_PRINT = "Print the price plan";
export const PLAN_PRICE_OVER_WEEKS = "Price over weeks";
/** Heads of the plan's table, on the screen and on paper. */
export const PLAN_HEAD_WEEK = "Week";
export const PLAN_HEAD_WHEN = "When";
export const PLAN_HEAD_ASK = "Ask";
export const PLAN_HEAD_TAKE = "Take at least";
export const PLAN_HEAD_SOLD = "Sold by then";
/** Where there is no plan because a find sells in pieces: each text before its link, and one after. */
export const IN_PIECES_BEFORE =
  "There is no plan of weeks for pieces that sell one by one. What each of them fetches stands with";
export const IN_PIECES_FIND = "the find";
export const IN_PIECES_BETWEEN = ", and what the advert must say on";
export const IN_PIECES_ASK = "what to ask";

/** "Selling: the grey one", in the tab of the browser. */
export function sellingTab(name: string): string {
  return `Selling: ${name}`;
}

/** "Week 3". */
export function weekTitle(week: number): string {
  return `Week ${week}`;
}

/** "€5 to €28"; the figure alone where both read the same. */
export function fromTo(first: string, last: string): string {
  return first === last ? first : `${first} to ${last}`;
}
