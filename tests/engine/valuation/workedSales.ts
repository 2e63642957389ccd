import type { SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";
import { plainSale } from "./plainSale.ts";

const RESTORED = { kind: "rides", condition: 1 } as const;
const SHOWN = { state: RESTORED, originality: 1, presentation: "full" } as const;
export const NOT_RIDING_AS_FOUND = { state: { kind: "does-not-ride" }, asFound: true } as const;

export const RACER = plainSale(
  { category: "road-racing", era: "1970s", componentTier: "upper" },
  { ...SHOWN, month: 4 },
);
const CELLAR_BIKE = plainSale(
  { category: "mountain-rigid", era: "1990s", componentTier: "upper", place: "city" },
  { ...SHOWN, month: 4 },
);

/** Worked by hand from the invented drivers: factor times factor. */
export const WORKED: readonly (readonly [string, SaleDescription, number])[] = [
  [
    "club racer, 350 x .62 x 1.12 x 1.08 x 1.08 x 1.08",
    plainSale({ category: "road-racing", era: "1980s" }, { ...SHOWN, month: 4 }),
    306,
  ],
  [
    "commuter hybrid, 220 x .82 x 1.08",
    plainSale({ frameMaterial: "aluminium" }, { state: { kind: "rides", condition: 0.45 }, month: 5 }),
    195,
  ],
  [
    "trail bike that does not ride, 290 x .94 x .33 x 1.04",
    plainSale(
      { category: "mountain-suspension", frameMaterial: "aluminium", sizeClass: "large" },
      { ...NOT_RIDING_AS_FOUND, month: 6 },
    ),
    94,
  ],
  ["original racer, 700 x .62 x 1.25 x 1.15 x 1.08 x 1.08 x 1.08", RACER, 786],
  [
    "middling hybrid that does not ride, 220 x .60 x .92 x .33 x 1.08",
    plainSale({ era: "2000s", frameMaterial: "aluminium" }, { ...NOT_RIDING_AS_FOUND, month: 4 }),
    43.3,
  ],
  [
    "carbon racer, 700 x 1.08",
    plainSale({ category: "road-racing", frameMaterial: "carbon", componentTier: "upper" }, { month: 5 }),
    756,
  ],
  [
    "rigid mountain bike in the city, 300 x .75 x 1.25 x 1.15 x 1.08, circumstances held at 1.25",
    CELLAR_BIKE,
    437,
  ],
];
