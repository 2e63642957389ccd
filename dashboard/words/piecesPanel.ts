import type { ValueBand } from "../api/types.ts";
import { type Piece, pieceNames } from "./pieces.ts";
import { moneyRange } from "./range.ts";

/** Heads of the table of pieces to list. */
export const PIECES_HEAD_LIST = "List";
export const PIECES_HEAD_PRICE = "Price";
export const PIECES_HEAD_SOLD = "Sold";
export const PIECES_HEAD_TIME = "Time";
export const PIECES_HEAD_BRINGS = "Brings";

/**
 * What the pieces fetch together, and from which figures that is worked out.
 * @param ownShare how much of it comes from the user's own sales, 0 to 1
 */
export function piecesFetch({ p10, p90 }: ValueBand, ownShare: number, currency: string): string {
  const source =
    ownShare > 0 ? "invented chances and prices that your own sales correct" : "invented prices and chances";
  const fetch = moneyRange(p10, p90, currency);
  return `Broken for parts, at your goal for an hour, from ${source}. If each sells, the best pieces fetch ${fetch} together, before fee and post.`;
}

/** What a crash spoils for good. */
export function cutThrough(pieces: readonly Piece[]): string {
  return `A sign of a crash was found. Do not sell or give away ${pieceNames(pieces)}: cut them through and recycle them.`;
}
