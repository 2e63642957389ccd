import { type Attributes, holds, TIERS } from "../engine/bicycle.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** The piece whose share is the haircut's: it has no row of its own. */
const FRAME = "frame";
/** Sums of shares this near are equal. */
const ROUNDING = 1e-9;

const breach = (field: string, requirement: string) =>
  new TableError(FILES.partsValue, null, field, requirement);

/** Pieces that no bike breaks into as the parts' value says. */
export function* pieceGaps(tables: ParsedTables): Generator<TableError> {
  yield* ids(tables);
  yield* kinds(tables);
  yield* sums(tables);
  yield* spoiling(tables);
  yield* signs(tables);
}

function* ids({ partsValue: { pieces, spoiled } }: ParsedTables): Generator<TableError> {
  const known = new Set<string>([FRAME]);
  for (const [n, { id }] of pieces.others.entries()) {
    if (known.has(id)) yield breach(`pieces.others[${n}].id`, `a piece of its own, got ${id} twice`);
    known.add(id);
  }
  for (const [n, { piece }] of spoiled.entries())
    if (!known.has(piece)) yield breach(`spoiled[${n}].piece`, `a known piece, got ${piece}`);
  for (const [n, id] of pieces.crash.exposed.entries())
    if (!known.has(id)) yield breach(`pieces.crash.exposed[${n}]`, `a known piece, got ${id}`);
}

function* kinds({ partsValue: { pieces }, parts }: ParsedTables): Generator<TableError> {
  const used = new Set(parts.filter(({ prices }) => prices.used !== null).map(({ id }) => id));
  for (const [n, { kinds: rows }] of pieces.others.entries()) {
    for (const [m, row] of rows.entries()) {
      const field = `pieces.others[${n}].kinds[${m}]`;
      if (row.onlyIf.length === 0 && m < rows.length - 1)
        yield breach(field, "a condition, or no kind after it: the first that fits is taken");
      for (const { attribute } of row.onlyIf)
        if (attribute !== "componentTier" && pieces.plain[attribute] === undefined)
          yield breach(`${field}.onlyIf`, `attributes that the plain bike tells, got ${attribute}`);
      for (const id of row.parts)
        if (!used.has(id)) yield breach(`${field}.parts`, `parts with a used price, got ${id}`);
    }
  }
}

/** The shares of the plain bike, frame included, sum to 1 in every tier. */
function* sums({ partsValue: { pieces, frameUnsaleable } }: ParsedTables): Generator<TableError> {
  for (const tier of TIERS) {
    const bike = { ...pieces.plain, componentTier: tier } as Attributes;
    const frame = 1 - frameUnsaleable[tier];
    const total = pieces.others.reduce((sum, { kinds: rows }) => {
      const kind = rows.find(({ onlyIf }) => holds(onlyIf, bike));
      return sum + (kind?.share[tier] ?? 0);
    }, frame);
    if (Math.abs(total - 1) > ROUNDING)
      yield breach(
        "pieces.others",
        `shares of the plain bike that sum to 1 in tier ${tier}, got ${Number(total.toFixed(6))}`,
      );
  }
}

/** A worse level takes no less off a piece than a milder one, and a level takes off a piece once. */
function* spoiling({ partsValue: { spoiled }, checks }: ParsedTables): Generator<TableError> {
  for (const [n, row] of spoiled.entries()) {
    const { levels, ordered } = checks.find(({ id }) => id === row.check)!;
    const rankOf = (level: string) => levels.findIndex(({ id }) => id === level);
    const others = spoiled.filter((one) => one !== row && one.check === row.check && one.piece === row.piece);
    const twice = row.levels.find((level) => others.some((one) => one.levels.includes(level)));
    if (twice) yield breach(`spoiled[${n}].levels`, `one row for a level and a piece, got ${twice} twice`);
    if (!ordered) continue;
    const worst = Math.max(...row.levels.map(rankOf));
    for (const { id } of levels.slice(worst + 1)) {
      const taken = [row, ...others].find((one) => one.levels.includes(id))?.share ?? 0;
      if (taken < row.share)
        yield breach(`spoiled[${n}].share`, `a share that no worse level undercuts, as ${id} does`);
    }
  }
}

/** A sign of a crash is a fault, and so is everything worse. */
function* signs({ partsValue: { pieces }, checks }: ParsedTables): Generator<TableError> {
  for (const [n, sign] of pieces.crash.signs.entries()) {
    const { levels } = checks.find(({ id }) => id === sign.check)!;
    const field = `pieces.crash.signs[${n}].levels`;
    if (sign.levels.includes(levels[0]!.id))
      yield breach(field, `faults alone, got ${levels[0]!.id}, which is sound`);
    const mildest = levels.findIndex(({ id }) => sign.levels.includes(id));
    const left = levels.slice(mildest).find(({ id }) => !sign.levels.includes(id));
    if (left) yield breach(field, `every level from the mildest sign on, without ${left.id}`);
  }
}
