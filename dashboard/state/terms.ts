import type { FindAsking } from "./finds.ts";

/** What an answer is held against. */
export interface Terms {
  readonly goal: number;
  /** Asked or paid; undefined where no price is known. */
  readonly price: number | undefined;
  readonly paid: boolean;
  /** Ids of the parts that were worked out with a price of the user's own. */
  readonly ownParts: ReadonlySet<string>;
}

/**
 * The terms an answer was asked with. They stand beside it until a newer answer comes, whatever was typed since:
 * a rate for the old price never stands beside the new one.
 * @param goal where nothing was asked with a goal yet
 */
export function termsOf({ answered }: Pick<FindAsking, "answered">, goal: number): Terms {
  const { find, workshop } = answered.value ?? {};
  return {
    goal: workshop?.hourlyGoal ?? goal,
    price: find?.purchase?.price,
    paid: find?.purchase?.paid === true,
    ownParts: new Set(Object.keys(workshop?.partPrices ?? {})),
  };
}
