import type { Vocabulary } from "../ownPrices/vocabulary.ts";
import { REMOVE } from "../words/common.ts";
import {
  COMPARABLE_FIGURES_GOING_RATE,
  COMPARABLE_FIGURES_MOVES,
  COMPARABLE_FIGURES_SAYS,
  COMPARABLE_SAME_MODEL,
  COMPARABLE_SURPRISING,
} from "../words/comparables.ts";
import { capital } from "../words/count.ts";
import { goalMoney, money } from "../words/money.ts";
import { saleFacts, saleName } from "../words/ownPrices.ts";
import { weightWords } from "../words/ownShare.ts";
import { movedWords } from "../words/sale.ts";
import type { ComparableRow } from "./comparableRows.ts";

interface ComparableCardProps {
  readonly row: ComparableRow;
  readonly find: string;
  readonly currency: string;
  readonly vocabulary: Vocabulary;
  readonly onRemove: () => void;
}

/** One of the user's own sales: its price, what it says of this bike, and how far it moves the estimate. */
export function ComparableCard({ row, find, currency, vocabulary, onRemove }: ComparableCardProps) {
  const { sale, goingRate, says, before, after, weight, surprising } = row;
  const name = saleName(sale, vocabulary);
  const figures = [
    [COMPARABLE_FIGURES_GOING_RATE, money(goingRate, currency)],
    [COMPARABLE_FIGURES_SAYS, money(says, currency)],
    [COMPARABLE_FIGURES_MOVES, movedWords(before, after, currency)],
  ] as const;
  return (
    <li class="comparable">
      <div class="ownhead">
        <span>
          <b>{name}</b> {sale.sameModelAs?.includes(find) && <span class="tag">{COMPARABLE_SAME_MODEL}</span>}
        </span>
        <b class="nowrap">
          {goalMoney(sale.price, sale.currency)} {sale.kind}
        </b>
      </div>
      <p class="small">{saleFacts(sale, vocabulary)}</p>
      <dl>
        {figures.map(([term, figure]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      {surprising && <p class="note">{COMPARABLE_SURPRISING}</p>}
      <div class="ownacts">
        <p class="small">{capital(weightWords(weight))}.</p>
        <button type="button" class="plainbtn" onClick={onRemove}>
          {REMOVE}
          <span class="sr"> {name}</span>
        </button>
      </div>
    </li>
  );
}
