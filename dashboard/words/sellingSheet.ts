import type { SellingPlan } from "../api/types.ts";
import { MONTHS } from "./fields.ts";
import { figure } from "./figure.ts";
import { billed, money } from "./money.ts";
import { weeksWords } from "./sellingFacts.ts";

/** What on the sheet is invented. */
export function sheetNote(invented: boolean): string {
  return invented
    ? "Invented find: this bicycle does not exist, and no price here is a market price."
    : "Prices and buyers from invented demo data: no price here is a market price.";
}

/** The terms of a plan in a sentence. */
export function marketWords(market: SellingPlan["market"], currency: string): string {
  const { weeks, arrivalsPerWeek, haggling, storagePerWeek, month } = market;
  const when = month === null ? "the seasons averaged" : `put up for sale in ${MONTHS[month - 1]}`;
  return [
    `${weeksWords(weeks)}, ${when};`,
    `${buyersWords(arrivalsPerWeek)}, who talk off ${percentWords(haggling)};`,
    `keeping it costs ${costWords(storagePerWeek, currency)} a week.`,
  ].join(" ");
}

/** "1.6 buyers a week". */
export function buyersWords(perWeek: number): string {
  const said = figure(Number(perWeek.toPrecision(2)), 3);
  return said === "1" ? "1 buyer a week" : `${said} buyers a week`;
}

/** "5 %". */
export function percentWords(share: number): string {
  return `${figure(share * 100, 1)} %`;
}

/** A small cost, to the cent where it has cents. */
export function costWords(cost: number, currency: string): string {
  return Number.isInteger(cost) ? money(cost, currency) : billed(cost, currency);
}
