/** A word of the answer, explained. */
interface Entry {
  /** As the box that explains it is headed. */
  readonly name: string;
  readonly text: string;
}

/** The words that an answer uses in a sense of its own, explained in one place. */
export const GLOSSARY = {
  "margin-per-hour": {
    name: "Margin per hour",
    text: "What is left of the sale after the price of the bike, parts and fees, for each hour you spend on it. It is the long-run rate: all the margin of many such bikes over all their hours.",
  },
  "likely-between": {
    name: "Likely between",
    text: "8 outcomes in 10 lie between the two figures: 1 in 10 turns out lower and 1 in 10 higher. The more you look at, the closer they come.",
  },
  "net-benefit": {
    name: "What is left after your hours",
    text: "The margin less your hours at your goal. Above nothing, the find earns more than your goal; between two courses, the one that leaves more is better.",
  },
  confidence: {
    name: "Ways it can turn out",
    text: "The same bike is played through many times with what nobody has seen yet. This is how often the course advised turns out, in hindsight, to have been the best.",
  },
  "knowing-everything": {
    name: "Knowing everything beforehand",
    text: "What you would gain on average if you knew how the bike turns out before you choose. No look and no question can be worth more than that.",
  },
  "added-hours": {
    name: "The added hours",
    text: "What a longer course brings on top of the next shorter one, for each hour it takes on top. A good average can hide last hours that earn little.",
  },
  "walk-away": {
    name: "Pay at most",
    text: "The price at which your hours earn just your goal, beyond what parts you bought for it are worth unused. Above it, leave the bike; each unit of money below it is yours.",
  },
  owed: {
    name: "Owed",
    text: "A look that must be made before the bike is sold as rideable. No fault is known there, but nobody has looked, and that never counts as good.",
  },
  "stop-limit": {
    name: "When to stop trying",
    text: "After so many minutes another quarter of an hour costs more than it is worth: the part hardly comes any more, and the cheapest way on without it is better.",
  },
  "right-to-change": {
    name: "The right to change course",
    text: "What you find once it is open may make another course better. You can still turn to it then, and the figure says what that is worth on average.",
  },
} as const satisfies Readonly<Record<string, Entry>>;

export type TermId = keyof typeof GLOSSARY;
