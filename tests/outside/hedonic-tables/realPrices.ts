import { HARRISON_RUBINFELD, TRACTS } from "./boston.ts";
import { dataAtHand } from "./dataAtHand.ts";
import { designOf } from "./design.ts";

/** Real prices with a design to predict them by. */
export interface RealPrices {
  readonly name: string;
  /** First column constant. */
  readonly rows: readonly (readonly number[])[];
  /** Logs of prices. */
  readonly y: readonly number[];
  /** For every column, how far its effect on log price is believed to lie from none, for one standard deviation of the column: told by group. */
  readonly effectSds: readonly number[];
  /** What is believed of the constant: log of a price that anybody would have named, loosely. */
  readonly level: { readonly mean: number; readonly sd: number };
  /** Prices that scatter more than the others, as those of collectable bikes do; how much more is learned. */
  readonly scatters: readonly boolean[];
  /** What a rival would call the same kind. */
  readonly kind: readonly string[];
}

/** Small effects, middling ones and those of size and wealth. */
const [SLIGHT, MIDDLING, LARGE] = [0.05, 0.1, 0.25];

/** Index of access to highways of the 132 inner tracts, which have one value for all. */
const INNER = 24;

export const BOSTON: RealPrices = {
  name: "Boston",
  ...HARRISON_RUBINFELD,
  // Constant; house: rooms, age; access: distance, highways; taxes and schools; people: two columns, crime; land: two columns, river; air.
  effectSds: [
    0,
    LARGE,
    MIDDLING,
    LARGE,
    MIDDLING,
    MIDDLING,
    MIDDLING,
    MIDDLING,
    LARGE,
    MIDDLING,
    SLIGHT,
    SLIGHT,
    SLIGHT,
    MIDDLING,
  ],
  level: { mean: Math.log(20_000), sd: 1 },
  scatters: TRACTS.map(({ rad }) => rad === INNER),
  kind: TRACTS.map(({ rm, rad }) => `${Math.round(rm)} rooms, ${rad === INNER ? "inner" : "outer"}`),
};

const WINDSOR_COLUMNS = [
  "const",
  "ln lotsize",
  "bedrooms",
  "bathrooms",
  "stories",
  "driveway",
  "recreation",
  "fullbase",
  "gasheat",
  "aircon",
  "garage",
  "prefer",
];

/** Verbeek's table 3.2; null where the data are not at hand. */
export function windsor(): RealPrices | null {
  const columns = dataAtHand("windsor546.csv");
  if (columns === null) return null;
  const size = ["ln lotsize", "bedrooms", "bathrooms", "stories"];
  const [bedrooms, stories] = [columns.get("bedrooms")!, columns.get("stories")!];
  return {
    name: "Windsor",
    ...designOf(columns, WINDSOR_COLUMNS, true),
    effectSds: WINDSOR_COLUMNS.map((name) => (name === "const" ? 0 : size.includes(name) ? LARGE : MIDDLING)),
    level: { mean: Math.log(70_000), sd: 1 },
    scatters: bedrooms.map(() => false),
    kind: bedrooms.map((rooms, row) => `${rooms} bedrooms on ${stories[row]} floors`),
  };
}
