/** Where a form's address names a find that is not kept in this browser. */
export const NO_SUCH_FIND_YOURS = "There is no find of yours by that name in this browser.";
/** The link to the page of an invented find. */
export const TO_ITS_PAGE = "To the find";

/** Where the address of a form names an invented find. */
export function inventedFind(name: string): string {
  return `${name} is an invented find. A copy of it is yours to change.`;
}
