import type { CheckId } from "../inspection/check.ts";
import type { FindingsByCheck, Inspection, UnseenCheck } from "../inspection/finding.ts";
import { findingAt } from "../inspection/findingsByCheck.ts";
import type { Probability } from "../quantity.ts";
import type { PartId } from "../service/part.ts";
import { rangeMoments } from "../service/partPrice.ts";
import type { PieceThere } from "../valuation/partsList.ts";
import type { SoundPiece } from "../valuation/soundPieces.ts";
import type { PieceLevels } from "../valuation/valueTables.ts";
import type { Book } from "./book.ts";
import type { SettledRequest } from "./settledRequest.ts";

/** Differences of shares below this are rounding. */
const NEAR_NOUGHT: Probability = 1e-12;

/**
 * The pieces that are there, as findings leave them: a finding takes its share off a piece, a check not made takes it by chance, and after a sign of a
 * crash bar, stem and fork are not sold at all. A piece of which all parts are missing is left out.
 */
export function piecesThere(
  sound: readonly SoundPiece[],
  { missingParts, attributes }: SettledRequest,
  inspection: Inspection,
  book: Book,
): readonly PieceThere[] {
  const { spoiled, pieces } = book.catalogue.value.parts;
  const seen = new Sight(inspection, book);
  const crashed = pieces.crash.signs.some((sign) => seen.found(sign));
  const crashes = pieces.crash.signs.map((sign) => ({ sign, chance: seen.chance(sign) }));
  const uncrashed = crashes.reduce((none, { chance }) => none * (1 - chance), 1);
  const unmade = crashes.filter(({ chance }) => chance > 0).map(({ sign }) => sign.check);
  const missing = new Set(missingParts);
  return sound.flatMap(({ id, name, parts, share, price, sells, minutes }): PieceThere[] => {
    const there = missing.size === 0 ? 1 : presentShare(parts, missing, attributes.componentTier, book);
    if (there === 0) return [];
    const rows = spoiled.filter((row) => row.piece === id);
    const gone = rows.reduce((sum, row) => sum + (seen.found(row) ? row.share : 0), 0);
    const left = Math.max(0, share - gone);
    const sparedBy = (row: (typeof rows)[number]) =>
      1 - seen.chance(row) * (share > 0 ? Math.min(1, row.share / share) : 0);
    const spared = rows.reduce((chance, row) => chance * sparedBy(row), 1);
    const exposed = pieces.crash.exposed.includes(id);
    const known = { id, name, sells, minutes, price: share > 0 ? (there * price * left) / share : 0 };
    if (exposed && crashed) return [{ ...known, chanceUsable: 0, barred: "crash-exposed", lookFirst: [] }];
    return [
      {
        ...known,
        chanceUsable: exposed ? spared * uncrashed : spared,
        barred: left <= NEAR_NOUGHT ? "spoiled" : null,
        lookFirst: exposed ? unmade : [],
      },
    ];
  });
}

/** What was found, and the chances of what was not looked at. */
class Sight {
  readonly #found: FindingsByCheck;
  readonly #unseen = new Map<CheckId, UnseenCheck[]>();
  readonly #book: Book;

  constructor({ byCheck, unseen }: Inspection, book: Book) {
    this.#book = book;
    this.#found = byCheck;
    for (const one of unseen) {
      const same = this.#unseen.get(one.check);
      if (same) same.push(one);
      else this.#unseen.set(one.check, [one]);
    }
  }

  found(match: PieceLevels): boolean {
    return findingAt(this.#found, match) !== undefined;
  }

  /** Chance that a check not made stands at one of the levels, on either wheel; 0 where one was found there already. */
  chance(match: PieceLevels): Probability {
    const unseen = this.#unseen.get(match.check);
    if (!unseen || this.found(match)) return 0;
    const { ranks } = this.#book.inspection.byId.get(match.check)!;
    const none = unseen.reduce((rest, { probabilities }) => {
      const at = match.levels.reduce((sum, level) => sum + probabilities[ranks.get(level)!]!, 0);
      return rest * (1 - at);
    }, 1);
    return 1 - none;
  }
}

/** Share of a piece that is there: used prices of its parts at the bike's own tier. The frame has no parts and is always there. */
function presentShare(
  parts: readonly PartId[],
  missing: ReadonlySet<PartId>,
  tier: SettledRequest["attributes"]["componentTier"],
  book: Book,
): Probability {
  if (!parts.some((id) => missing.has(id))) return 1;
  const used = (ids: readonly PartId[]) =>
    ids.reduce((sum, id) => sum + rangeMoments(book.service.parts.get(id)!.prices.used![tier]).mean, 0);
  return used(parts.filter((id) => !missing.has(id))) / used(parts);
}
