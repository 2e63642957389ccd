import type { Minutes, Money, Probability } from "../quantity.ts";
import type { SoundPiece } from "./soundPieces.ts";

/** Why a piece is given away or recycled. */
export type NotListed =
  | "frame-blocked"
  | "crash-exposed"
  | "spoiled"
  | "not-worth-its-minutes"
  | "enough-listed";

/** A piece that is there, as what is known of the bike leaves it. */
export interface PieceThere extends Pick<SoundPiece, "id" | "name" | "sells" | "minutes"> {
  /** What it fetches if it sells, less what was found spoiled of it. */
  readonly price: Money;
  /** Chance that what nobody has looked at yet leaves it fit to sell. */
  readonly chanceUsable: Probability;
  /** It may not be listed whatever it would bring. */
  readonly barred: NotListed | null;
  /** Checks not made that may forbid to sell it. */
  readonly lookFirst: readonly string[];
}

/** A row of the list: to sell, or to give away with the reason. */
export interface ListedPiece {
  readonly piece: string;
  readonly name: string;
  readonly listed: boolean;
  readonly reason: NotListed | null;
  readonly chanceUsable: Probability;
  readonly chanceSold: Probability;
  /** What it fetches if it is fit to sell and sells, before fee and post. */
  readonly price: Money;
  /** To list, pack and post it, at speed 1. */
  readonly minutes: Minutes;
  /** Expected fee and post. */
  readonly fee: Money;
  /** Expected takings after unsold, fee and post. */
  readonly expected: Money;
  /** Checks not made that may forbid to sell it: to be made before it is listed. */
  readonly lookFirst: readonly string[];
}

/** The pieces and the sums of those listed. */
export interface PartsList {
  readonly pieces: readonly ListedPiece[];
  /** What the listed ones fetch if each one fit to sell sells. */
  readonly gross: Money;
  readonly takings: Money;
  readonly minutes: Minutes;
}

export interface PartsTerms {
  /** Share of a price that is left after fee and post. */
  readonly netShare: Probability;
  /** Worth of a minute at speed 1 at the user's goal. */
  readonly minuteWorth: Money;
  /** Most pieces that are listed. */
  readonly most: number;
  /** Paid once where anything is sold. */
  readonly fixedCost: Money;
}

/** A piece weighed: what it brings, and whether that is worth its minutes. */
interface WeighedPiece {
  readonly piece: PieceThere;
  readonly expected: Money;
  readonly fee: Money;
  readonly worth: Money;
}

/**
 * Which pieces to list: those whose expected takings pay their minutes at the goal, the best ones where there are more than may be listed, none where all
 * together do not pay what is due once. Worths of pieces add, so the best few of those above nought are the best of all choices. Common practice, no source.
 */
export function listParts(pieces: readonly PieceThere[], terms: PartsTerms): PartsList {
  const weighed = pieces.map((piece) => weigh(piece, terms));
  const { best, spared } = chosen(weighed, terms);
  const rows = weighed.map((one) => {
    const listed = best.includes(one);
    const unlisted = spared.includes(one) ? "enough-listed" : "not-worth-its-minutes";
    return rowOf(one, listed ? null : (one.piece.barred ?? unlisted));
  });
  rows.sort((a, b) => Number(b.listed) - Number(a.listed) || b.expected - a.expected);
  let [gross, takings, minutes] = [0, 0, 0];
  for (const row of rows) {
    if (!row.listed) continue;
    gross += row.price * row.chanceUsable;
    takings += row.expected;
    minutes += row.minutes;
  }
  return { pieces: rows, gross, takings, minutes };
}

/** What the listed ones of a list would fetch together if each one fit to sell sells. */
export function grossOfListed(pieces: readonly PieceThere[], terms: PartsTerms): Money {
  const { best } = chosen(
    pieces.map((piece) => weigh(piece, terms)),
    terms,
  );
  best.sort((a, b) => b.expected - a.expected);
  return best.reduce((sum, { piece }) => sum + piece.price * piece.chanceUsable, 0);
}

function weigh(piece: PieceThere, { netShare, minuteWorth }: PartsTerms): WeighedPiece {
  const { barred, price, chanceUsable, sells, minutes } = piece;
  const sold = price * chanceUsable * sells;
  const expected = sold * netShare;
  const worth = barred === null ? expected - minutes * minuteWorth : -Infinity;
  return { piece, expected, fee: sold - expected, worth };
}

/** The pieces to list, and those that are left only because there are enough. */
function chosen(weighed: readonly WeighedPiece[], { most, fixedCost }: PartsTerms) {
  const ranked = weighed.filter(({ worth }) => worth > 0).sort((a, b) => b.worth - a.worth);
  const best = ranked.slice(0, most);
  const pays = best.reduce((sum, { worth }) => sum + worth, 0) > fixedCost;
  return pays ? { best, spared: ranked.slice(most) } : { best: [], spared: [] };
}

function rowOf({ piece, expected, fee }: WeighedPiece, reason: NotListed | null): ListedPiece {
  return {
    piece: piece.id,
    name: piece.name,
    listed: reason === null,
    reason,
    chanceUsable: piece.chanceUsable,
    chanceSold: piece.sells,
    price: piece.price,
    minutes: piece.minutes,
    fee,
    expected,
    lookFirst: piece.lookFirst,
  };
}
