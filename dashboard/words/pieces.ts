import type { Appraisal } from "../api/types.ts";
import { capital, count, counted, listed, uncapital } from "./count.ts";
import { money, roundTo } from "./money.ts";
import { hours, minutes } from "./time.ts";

/** A piece of a bike broken for parts. */
export type Piece = NonNullable<Appraisal["value"]>["pieces"][number];

/** "Four pieces bring about €27 for 1.2 h of selling". */
export function piecesTitle(pieces: readonly Piece[], currency: string): string {
  const toList = pieces.filter((piece) => piece.listed);
  if (toList.length === 0) return "No piece pays for the minutes to sell it";
  const takings = toList.reduce((sum, { expected }) => sum + expected, 0);
  const spent = toList.reduce((sum, piece) => sum + piece.minutes, 0);
  const time = roundTo(spent, 1) < 60 ? minutes(spent) : hours(spent / 60);
  const bring = `${toList.length === 1 ? "brings" : "bring"} about ${money(takings, currency)}`;
  return `${capital(counted(toList.length, "piece"))} ${bring} for ${time} of selling`;
}

/** Chance that a listed piece turns out fit to sell and sells. */
export function soldChance({ chanceUsable, chanceSold }: Piece): number {
  return chanceUsable * chanceSold;
}

/** Pieces in a sentence: "pair of wheels, fork and bar and stem". */
export function pieceNames(pieces: readonly Piece[]): string {
  return listed(pieces.map(({ name }) => uncapital(name)));
}

/** What is not listed, with the reason once for all pieces that share it. */
export function givenAway(
  pieces: readonly Piece[],
): readonly { readonly why: string; readonly what: string }[] {
  const sold = pieces.filter((piece) => piece.listed).length;
  const reasons: readonly (readonly [NonNullable<Piece["reason"]>, string])[] = [
    ["not-worth-its-minutes", "Bring less than the minutes to sell them are worth to you"],
    ["enough-listed", `Would pay, but ${count(sold)} better ones are listed and more is not sold as a rule`],
    ["spoiled", "Spoiled by a fault you found"],
    ["crash-exposed", "Not for sale after a sign of a crash"],
    ["frame-blocked", "Not for sale with the fault found in frame or fork"],
  ];
  return reasons.flatMap(([reason, why]) => {
    const these = pieces.filter((piece) => piece.reason === reason);
    return these.length === 0 ? [] : [{ why, what: capital(pieceNames(these)) }];
  });
}

/** What must be looked at before bar, stem or fork are listed; null where nothing is open or none is to be listed. */
export function lookBeforeListing(
  pieces: readonly Piece[],
  checkName: (check: string) => string,
): string | null {
  const open = pieces.filter((piece) => piece.listed && piece.lookFirst.length > 0);
  if (open.length === 0) return null;
  const checks = [...new Set(open.flatMap(({ lookFirst }) => lookFirst))];
  const names = checks.map((check) => uncapital(checkName(check))).join("; ");
  return `Not looked at: ${names}. Look before you list ${pieceNames(open)}: after a crash they are not sold.`;
}
