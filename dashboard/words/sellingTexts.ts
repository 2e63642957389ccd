/** Texts of the page with the plan of prices, that hold no figure. */
export const PLAN_TEXTS = {
  noPlan: "No price plan yet.",
  notToBeSold: "Not to be sold as things stand.",
  notWhole: "It cannot be sold whole.",
  comesTo: "What it comes to",
  terms: "Terms",
  listedOn: "Listed on (week 1 begins)",
  print: "Print the price plan",
  priceOverWeeks: "Price over weeks",
  advert: "What the advert must say",
} as const;
/** Heads of the plan's table, on the screen and on paper. */
export const PLAN_HEAD = {
  week: "Week",
  when: "When",
  ask: "Ask",
  take: "Take at least",
  sold: "Sold by then",
} as const;
/** Where there is no plan because a find sells in pieces: each text before its link, and one after. */
export const IN_PIECES = {
  before: "There is no plan of weeks for pieces that sell one by one. What each of them fetches stands with",
  find: "the find",
  between: ", and what the advert must say on",
  ask: "what to ask",
} as const;

/** "Selling: the grey one", in the tab of the browser. */
export function sellingTab(name: string): string {
  return `Selling: ${name}`;
}

/** "Week 3". */
export function weekTitle(week: number): string {
  return `Week ${week}`;
}
