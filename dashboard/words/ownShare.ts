import { capital, count } from "./count.ts";
import { many } from "./ownPrices.ts";

const FRACTIONS: readonly (readonly [number, string])[] = [
  [1 / 20, "a twentieth"],
  [1 / 10, "a tenth"],
  [1 / 5, "a fifth"],
  [1 / 4, "a quarter"],
  [1 / 3, "a third"],
  [2 / 5, "two fifths"],
  [1 / 2, "half"],
  [3 / 5, "three fifths"],
  [2 / 3, "two thirds"],
  [3 / 4, "three quarters"],
  [4 / 5, "four fifths"],
  [9 / 10, "nine tenths"],
  [1, "nearly all"],
];
/** Below this a share is not worth a fraction. */
const LEAST = 1 / 30;
const HARDLY = 0.005;

/** A share of a whole as the nearest plain fraction: "a third", "less than a twentieth". */
export function fraction(share: number): string {
  if (share < LEAST) return "less than a twentieth";
  const [, words] = FRACTIONS.reduce((best, one) =>
    Math.abs(one[0] - share) < Math.abs(best[0] - share) ? one : best,
  );
  return words;
}

/** What one price does to an estimate, from its weight: "counts for a third of the estimate". */
export function weightWords(weight: number): string {
  if (Math.abs(weight) < HARDLY) return "counts for hardly anything";
  if (weight < 0) return "pulls the estimate the other way, a little";
  return `counts for ${fraction(weight)} of the estimate`;
}

/** "your one sale", "your 5 sales". */
export function yourSales(n: number): string {
  return n === 1 ? "your one sale" : `your ${many(n, "sale")}`;
}

/**
 * Where an estimate comes from: "Seven tenths of this estimate come from your 5 sales, the rest from invented demo sales."
 * @param share of the estimate that rests on the user's own sales, 0 to 1
 * @param sales how many of them
 * @param what the estimates in question, inside a sentence
 */
export function shareSentence(
  share: number,
  sales: number,
  what: "this estimate" | "these estimates" = "this estimate",
): string {
  const come = what === "this estimate" ? "comes" : "come";
  if (sales === 0) return `All of ${what} ${come} from invented demo sales.`;
  const tenths = Math.round(share * 10);
  const yours = yourSales(sales);
  if (tenths === 0)
    return `Hardly any of ${what} ${come} from ${yours}; nearly all of it from invented demo sales.`;
  if (tenths === 10)
    return `Nearly all of ${what} ${come} from ${yours}, the little rest from invented demo sales.`;
  const rest = `from ${yours}, the rest from invented demo sales.`;
  if (tenths === 1 || tenths === 5)
    return `${tenths === 1 ? "One tenth" : "Half"} of ${what} ${come} ${rest}`;
  return `${capital(count(tenths))} tenths of ${what} come ${rest}`;
}
