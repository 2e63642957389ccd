import { expect, test } from "vitest";
import { sampleQuantile } from "../../../worker/engine/statistics/sampleQuantile.ts";

const MILES_PER_GALLON = [
  21, 21, 22.8, 21.4, 18.7, 18.1, 14.3, 24.4, 22.8, 19.2, 17.8, 16.4, 17.3, 15.2, 10.4, 10.4, 14.7, 32.4,
  30.4, 33.9, 21.5, 15.5, 15.2, 13.3, 19.2, 27.3, 26, 30.4, 15.8, 19.7, 15, 21.4,
].sort((a, b) => a - b);

test.each([
  [0, 10.4],
  [0.25, 15.425],
  [0.5, 19.2],
  [0.75, 22.8],
  [1, 33.9],
])("the type 7 quantile at %f of 32 cars' mileage is %f (R, see SOURCE.md)", (probability, printed) => {
  expect(sampleQuantile(MILES_PER_GALLON, probability)).toBeCloseTo(printed, 12);
});
