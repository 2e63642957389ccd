import type { LevelMatch } from "../../../worker/engine/service/operation.ts";
import { fits, type Given } from "./given.ts";
import type { Hidden, Past } from "./past.ts";

/** Something nobody looked at that takes from a piece where it stands. */
export interface Threat {
  readonly match: LevelMatch;
  /** Share of the piece that it takes. */
  readonly share: number;
}

/** A piece of the bike as it is listed, if it is. */
export interface Piece {
  readonly id: string;
  readonly isFrame: boolean;
  /** What reaches the seller at the middle of prices, where it is fit and sells. */
  readonly net: number;
  readonly sells: number;
  readonly postingMinutes: number;
  readonly threats: readonly Threat[];
  /** Chance that it is fit, each threat taken on its own: as the engine lists it, but for the frame's own. */
  readonly fit: number;
}

/** The pieces of a whole bike with prices and chances from the table of parts, less what was found spoiled. */
export function piecesOf(given: Given, past: Past): readonly Piece[] {
  const { tables, attributes, prices, fee } = given;
  const { pieces: table, frameUnsaleable, spoiled, soldShare, netShare } = tables.value.parts;
  const tier = attributes.componentTier;
  const total = Math.exp(prices.parts.logMedian + prices.parts.logSd ** 2 / 2);
  const kinds = table.others.flatMap(({ id, kinds: rows }) => {
    const kind = rows.find(({ onlyIf }) => fits(onlyIf, attributes));
    return kind ? [{ ...kind, id, part: kind.share[tier] }] : [];
  });
  const parted = kinds.reduce((sum, { part }) => sum + part, 0);
  const all = [
    { ...table.frame, id: "frame", parts: [] as readonly string[], share: 1 - frameUnsaleable[tier] },
    ...kinds.map((kind) => ({ ...kind, share: (frameUnsaleable[tier] * kind.part) / parted })),
  ];
  const usual = [...all]
    .sort((a, b) => b.share * b.sells[tier] - a.share * a.sells[tier])
    .slice(0, table.most);
  const fetched = usual.reduce((sum, { share }) => sum + share, 0);
  const ease = (soldShare * fetched) / usual.reduce((sum, { share, sells }) => sum + share * sells[tier], 0);
  const kept = (netShare * (1 - fee.rate)) / (1 - tables.defaults.fee.rate);
  return all.map(({ id, parts, share, sells, minutes }) => {
    const rows = spoiled.filter(({ piece }) => piece === id);
    const gone = rows.filter((row) => wasSeen(given, row)).reduce((sum, row) => sum + row.share, 0);
    const left = (Math.max(0, share - gone) / share) * thereShare(given, parts);
    const threats = rows
      .filter((row) => !wasSeen(given, row))
      .map((row): Threat => ({ match: row, share: Math.min(1, row.share / share) }));
    if (table.crash.exposed.includes(id))
      threats.push(
        ...table.crash.signs.filter((sign) => !wasSeen(given, sign)).map((match) => ({ match, share: 1 })),
      );
    return {
      id,
      isFrame: id === "frame",
      net: ((share * total) / fetched) * left * kept,
      sells: Math.min(1, sells[tier] * ease),
      postingMinutes: minutes,
      threats,
      fit: threats.reduce((none, threat) => none * (1 - threat.share * chanceOf(past, threat.match)), 1),
    };
  });
}

function wasSeen({ seen }: Given, { check, levels }: LevelMatch): boolean {
  return seen.some((one) => one.check === check && levels.includes(one.level));
}

function chanceOf({ hidden }: Past, { check: id, levels }: LevelMatch): number {
  const one: Hidden | undefined = hidden.find(({ check }) => check.id === id);
  if (!one) return 0;
  return one.check.levels.reduce(
    (sum, { id: level }, rank) => sum + (levels.includes(level) ? one.overall[rank]! : 0),
    0,
  );
}

/** Share of a piece that is not missing, by used prices at the bike's own tier. */
function thereShare({ missingParts, tables, attributes }: Given, parts: readonly string[]): number {
  const worth = (ids: readonly string[]) =>
    ids.reduce((sum, id) => {
      const part = tables.service.parts.find((one) => one.id === id)!;
      const { low, typical, high } = part.prices.used![attributes.componentTier];
      return sum + (low + 4 * typical + high) / 6;
    }, 0);
  return parts.some((id) => missingParts.includes(id))
    ? worth(parts.filter((id) => !missingParts.includes(id))) / worth(parts)
    : 1;
}
