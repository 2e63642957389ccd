/** What moves a price among the demo sales, in the order it is told. */
export const DEMO_DRIVERS = [
  "level",
  "kind",
  "era",
  "material",
  "size",
  "fashion",
  "originality",
  "desirability",
  "condition",
  "presentation",
  "papers",
  "season",
  "place",
] as const;
export type DemoDriver = (typeof DEMO_DRIVERS)[number];

/** What only sales of one's own can tell: the level of the market, what asking adds, this very model. */
export const OWN_DRIVERS = ["market", "asked", "same-model"] as const;

export const DRIVERS = [...DEMO_DRIVERS, ...OWN_DRIVERS] as const;
export type Driver = (typeof DRIVERS)[number];

/** The drivers that overlap, so that their product is held between limits. */
export const CIRCUMSTANCES: readonly Driver[] = ["presentation", "papers", "season", "place"];
