import type { RandomNumbers } from "./randomNumbers.ts";

/** Cards with how often each is in the pack. */
export type Deck<Card> = readonly (readonly [card: Card, copies: number])[];

/** Deals from shuffled packs, one after another: every card turns up in its exact proportion, in no order. */
export function shuffledDeck<Card>(deck: Deck<Card>, random: RandomNumbers): () => Card {
  const pack = deck.flatMap(([card, copies]) => Array.from({ length: copies }, () => card));
  let left: Card[] = [];
  return () => {
    if (left.length === 0) left = shuffled(pack, random);
    return left.pop()!;
  };
}

/** Fisher-Yates. */
function shuffled<Card>(cards: readonly Card[], random: RandomNumbers): Card[] {
  const result = [...cards];
  for (let last = result.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [result[last], result[other]] = [result[other]!, result[last]!];
  }
  return result;
}
