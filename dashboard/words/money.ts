import { formatOf, written } from "./figure.ts";

const styled = (currency: string, digits: number): Intl.NumberFormatOptions => ({
  style: "currency",
  currency,
  currencyDisplay: "narrowSymbol",
  minimumFractionDigits: digits,
  maximumFractionDigits: digits,
});

const inMoney = (value: number, currency: string, digits: number) => written(value, styled(currency, digits));

/** Rounded to a step, halves away from nought; never a negative nought. */
export function roundTo(value: number, step: number): number {
  return Math.sign(value) * Math.round(Math.abs(value) / step) * step + 0;
}

/** What an amount bears: whole units below 100, else steps of 5. */
export function roundMoney(value: number): number {
  const whole = roundTo(value, 1);
  return Math.abs(whole) < 100 ? whole : roundTo(value, 5);
}

/**
 * An estimated amount: "€76", "€145", "−€30".
 * @param currency ISO 4217
 */
export function money(value: number, currency: string): string {
  return inMoney(roundMoney(value), currency, 0);
}

/** A price asked or paid: "€40", "nothing". */
export function priceWords(price: number, currency: string): string {
  return price === 0 ? "nothing" : money(price, currency);
}

/** A line or a sum of a bill, to the cent: "€14.50". */
export function billed(value: number, currency: string): string {
  return inMoney(roundTo(value, 0.01), currency, 2);
}

/** Money for each hour, without the hour: "€16". */
export function rate(value: number, currency: string): string {
  return inMoney(roundTo(value, 1), currency, 0);
}

/** "€16 an hour". */
export function anHour(value: number, currency: string): string {
  return `${rate(value, currency)} an hour`;
}

/** The hourly goal as it was set: whole where it is whole, else to the cent. */
export function goalMoney(value: number, currency: string): string {
  return Number.isInteger(value) ? inMoney(value, currency, 0) : billed(value, currency);
}

/** A sentence of the API's, which names amounts with the currency's code, in the words of the screen: "279 EUR" becomes "€280". */
export function withMoney(text: string, currency: string): string {
  return text.replace(
    // A hyphen behind a figure is that of a range, not a minus.
    new RegExp(`((?<!\\d)[\u2212-])?(\\d+(?:\\.\\d+)?) ${currency}\\b`, "g"),
    (_, minus: string | undefined, figure: string) =>
      money((minus === undefined ? 1 : -1) * Number(figure), currency),
  );
}

/** The sign of a currency alone: "€". */
export function currencySign(currency: string): string {
  const sign = formatOf(styled(currency, 0))
    .formatToParts(0)
    .find((part) => part.type === "currency");
  return sign?.value ?? currency;
}
