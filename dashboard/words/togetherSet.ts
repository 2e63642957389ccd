import { capital, count } from "./count.ts";

/** Above the list of the chosen: "Take these two". */
export function setHeading(chosen: number, overrun: boolean): string {
  if (overrun) return "No set fits what you hold to";
  if (chosen === 0) return "Take none";
  return chosen === 1 ? "Take this one" : `Take these ${count(chosen)}`;
}

/** What stands beside the names in a chart's picture: "1 Plum hybrid: make safe". */
export function keyWords(number: number, name: string, course: string, chosen: boolean): string {
  return `${number} ${capital(name)}: ${course.toLowerCase()}${chosen ? ", chosen" : ""}`;
}
