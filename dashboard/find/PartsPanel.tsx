import type { Appraisal } from "../api/types.ts";
import { Warning } from "../signs/Warning.tsx";
import { chance } from "../words/chance.ts";
import { IN_ALL } from "../words/common.ts";
import {
  FIND_GIVEN_AWAY,
  FIND_PARTS_FETCH,
  FIND_PIECES_NOTE,
  FIND_PIECES_TO_LIST,
} from "../words/findPanels.ts";
import { money } from "../words/money.ts";
import { givenAway, lookBeforeListing, type Piece, piecesTitle, soldChance } from "../words/pieces.ts";
import {
  cutThrough,
  PIECES_HEAD_BRINGS,
  PIECES_HEAD_LIST,
  PIECES_HEAD_PRICE,
  PIECES_HEAD_SOLD,
  PIECES_HEAD_TIME,
  piecesFetch,
} from "../words/piecesPanel.ts";
import { minutes } from "../words/time.ts";
import type { Names } from "./names.ts";

interface PartsPanelProps {
  readonly value: NonNullable<Appraisal["value"]>;
  readonly currency: string;
  readonly names: Names;
  /** Breaking for parts is the plan in sight: the list stands open. */
  readonly inSight: boolean;
}

/** What the parts would fetch piece by piece: what to list, and what is given away and why. */
export function PartsPanel({ value, currency, names, inSight }: PartsPanelProps) {
  const { pieces, parts, ownShare } = value;
  if (pieces.length === 0) return null;
  const toList = pieces.filter((piece) => piece.listed);
  const rest = givenAway(pieces);
  return (
    <section class="panel" aria-labelledby="parts-title">
      <h2 id="parts-title">{piecesTitle(pieces, currency)}</h2>
      <p class="small">{piecesFetch(parts, ownShare, currency)}</p>
      <details key={inSight ? "open" : "folded"} open={inSight}>
        <summary>{FIND_PARTS_FETCH}</summary>
        <Cautions pieces={pieces} names={names} />
        {toList.length > 0 && <ToList pieces={toList} currency={currency} />}
        {rest.length > 0 && (
          <>
            <h3 class="small piecesrest">{FIND_GIVEN_AWAY}</h3>
            <ul class="bullets">
              {rest.map(({ why, what }) => (
                <li key={why}>
                  <b>{why}:</b> {what}.
                </li>
              ))}
            </ul>
          </>
        )}
      </details>
    </section>
  );
}

function Cautions({ pieces, names }: { pieces: readonly Piece[]; names: Names }) {
  const exposed = pieces.filter(({ reason }) => reason === "crash-exposed");
  const look = lookBeforeListing(pieces, names.check);
  return (
    <>
      {exposed.length > 0 && <Warning kind="stop">{cutThrough(exposed)}</Warning>}
      {look !== null && <Warning kind="mind">{look}</Warning>}
    </>
  );
}

function ToList({ pieces, currency }: { pieces: readonly Piece[]; currency: string }) {
  const sum = (of: (piece: Piece) => number) => pieces.reduce((total, piece) => total + of(piece), 0);
  return (
    <div class="scrolled">
      <table class="pieces">
        <caption class="sr">{FIND_PIECES_TO_LIST}</caption>
        <thead>
          <tr>
            <th scope="col">{PIECES_HEAD_LIST}</th>
            <th scope="col" class="right">
              {PIECES_HEAD_PRICE}
            </th>
            <th scope="col" class="right">
              {PIECES_HEAD_SOLD}
            </th>
            <th scope="col" class="right">
              {PIECES_HEAD_TIME}
            </th>
            <th scope="col" class="right">
              {PIECES_HEAD_BRINGS}
            </th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.piece}>
              <th scope="row">{piece.name}</th>
              <td class="right">{money(piece.price, currency)}</td>
              <td class="right">{chance(soldChance(piece), 10)}</td>
              <td class="right">{minutes(piece.minutes)}</td>
              <td class="right">{money(piece.expected, currency)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{IN_ALL}</th>
            <td />
            <td />
            <td class="right">{minutes(sum((piece) => piece.minutes))}</td>
            <td class="right">
              {money(
                sum(({ expected }) => expected),
                currency,
              )}
            </td>
          </tr>
        </tfoot>
      </table>
      <p class="small">{FIND_PIECES_NOTE}</p>
    </div>
  );
}
