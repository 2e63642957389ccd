import { type Attributes, holds } from "../bicycle.ts";
import type { Minutes, Money, Probability } from "../quantity.ts";
import type { PartsValueTable } from "./valueTables.ts";

/** The frame among the pieces. */
export const FRAME = "frame";

/** A piece of a bike as it would sell if it were there and sound. */
export interface SoundPiece {
  readonly id: string;
  readonly name: string;
  /** Parts of the catalogue that make it up; none for the frame. */
  readonly parts: readonly string[];
  /** Of the worth of all parts: the shares of a bike's pieces sum to 1. */
  readonly share: Probability;
  readonly price: Money;
  /** Chance that it sells once listed. */
  readonly sells: Probability;
  /** To list, pack and post it, at speed 1. */
  readonly minutes: Minutes;
}

/**
 * The pieces of one kind of bike with their prices, dearest takings first. The frame's share is what its haircut takes away; the others share the rest.
 * Prices are scaled so that the pieces sold in common practice (the best seven) fetch the total if each sells, and chances so that the table's share
 * of that total is sold. Common practice, no source.
 * @param total what the parts of the whole and sound bike fetch, before unsold pieces, fee and post
 */
export function soundPieces(table: PartsValueTable, bike: Attributes, total: Money): readonly SoundPiece[] {
  const { most, frame, others } = table.pieces;
  const tier = bike.componentTier;
  const rest = table.frameUnsaleable[tier];
  const kinds = others.flatMap(({ id, kinds }) => {
    const kind = kinds.find(({ onlyIf }) => holds(onlyIf, bike));
    return kind ? [{ ...kind, id, share: kind.share[tier], sells: kind.sells[tier] }] : [];
  });
  const all = kinds.reduce((sum, { share }) => sum + share, 0);
  const pieces = [
    { ...frame, id: FRAME, parts: [], share: 1 - rest, sells: frame.sells[tier] },
    ...kinds.map((kind) => ({ ...kind, share: all > 0 ? (rest * kind.share) / all : 0 })),
  ].sort((a, b) => b.share * b.sells - a.share * a.sells);
  const usual = pieces.slice(0, most);
  const fetched = usual.reduce((sum, { share }) => sum + share, 0);
  const sold = usual.reduce((sum, { share, sells }) => sum + share * sells, 0);
  const perShare = fetched > 0 ? total / fetched : 0;
  const ease = sold > 0 ? (table.soldShare * fetched) / sold : 0;
  return pieces.map(({ id, name, parts, share, sells, minutes }) => ({
    id,
    name,
    parts,
    share,
    price: share * perShare,
    sells: Math.min(1, sells * ease),
    minutes,
  }));
}
