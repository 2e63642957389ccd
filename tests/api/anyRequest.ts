import fc from "fast-check";
import type { AppraisalBody } from "../../worker/api/types.ts";
import { ATTRIBUTE_VALUES, type AttributeName } from "../../worker/engine/bicycle.ts";
import type { Check, MeasuredInput } from "../../worker/engine/inspection/check.ts";
import type { Reading } from "../../worker/engine/inspection/observation.ts";
import { readCatalogue } from "../../worker/tables.ts";

const { inspection, service } = readCatalogue();
const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const money = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e9, noNaN: true }));
const minutes = fc.double({ min: 0, max: 100_000, noNaN: true });

const attributes = Object.fromEntries(
  Object.entries(ATTRIBUTE_VALUES).map(([name, values]) => [name, fc.constantFrom<string>(...values)]),
) as Record<AttributeName, fc.Arbitrary<string>>;

const find = fc.record(
  {
    ...attributes,
    id: fc.string({ maxLength: 200 }),
    frameSizeMm: fc.integer({ min: 300, max: 700 }),
    tyreMarking: fc.constantFrom("32-622", "27 x 1 1/4", "47-559", "26 x 1.75", "700 x 28C"),
    beadSeatDiameterMm: fc.constantFrom(622, 559, 590, 451, 599),
    rearSprockets: fc.integer({ min: 1, max: 14 }),
    desirability: share,
    originality: share,
    missingParts: fc.subarray(ids(service.parts), { maxLength: 5 }),
    purchase: fc.record(
      { price: money, paid: fc.boolean(), travelMinutes: minutes, travelCost: money },
      { requiredKeys: [] },
    ),
    soFar: fc.record(
      {
        money,
        minutes,
        done: fc.subarray(ids(service.operations), { maxLength: 8 }),
        bought: fc.array(
          fc.record(
            {
              part: fc.constantFrom(...ids(service.parts)),
              quantity: fc.double({ min: 0.001, max: 1000, noNaN: true }),
              reuseValue: money,
            },
            { requiredKeys: ["part"] },
          ),
          { maxLength: 4 },
        ),
      },
      { requiredKeys: [] },
    ),
  },
  { requiredKeys: ["category", "era", "frameMaterial", "componentTier"] },
) as fc.Arbitrary<AppraisalBody["find"]>;

function measuredValue({ unit, min, max }: MeasuredInput): fc.Arbitrary<number> {
  return unit === "count" ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
}

function reading({ levels, measurement }: Check): fc.Arbitrary<Reading> {
  const judged = fc.record({ level: fc.constantFrom(...ids(levels)) });
  if (measurement === null) return judged;
  const inputs = measurement.inputs.map((input) => [input.id, measuredValue(input)] as const);
  const required = measurement.inputs.filter(({ optional }) => !optional).map(({ id }) => id);
  const measured = fc.record({
    measured: fc.record(Object.fromEntries(inputs), { requiredKeys: required }),
    flags: fc.subarray(ids(measurement.flags)),
  });
  return fc.oneof(judged, measured);
}

function observation(check: Check) {
  const whole = reading(check);
  if (!check.perWheel) return whole;
  return fc.oneof(whole, fc.record({ front: whole, rear: whole }), fc.record({ rear: whole }));
}

const observations = fc.record(
  Object.fromEntries(inspection.checks.map((check) => [check.id, observation(check)])),
  { requiredKeys: [] },
) as fc.Arbitrary<NonNullable<AppraisalBody["observations"]>>;

const KINDS_WITH_A_PRICE = ATTRIBUTE_VALUES.category.filter((kind) => kind !== "e-bike-out-of-scope");
const { era, frameMaterial, componentTier, sizeClass, place, stepThrough, drivetrain } = attributes;

type Comparables = NonNullable<AppraisalBody["comparables"]>;
const comparable = fc.record(
  {
    price: fc.oneof(fc.constantFrom(0.01, 1e9), fc.double({ min: 0.01, max: 1e4, noNaN: true })),
    kind: fc.constantFrom("paid", "asked"),
    ageDays: fc.double({ min: 0, max: 36_525, noNaN: true }),
    likeThis: fc.boolean(),
    id: fc.string({ minLength: 1, maxLength: 80 }),
    category: fc.constantFrom(...KINDS_WITH_A_PRICE),
    era,
    frameMaterial,
    componentTier,
    sizeClass,
    place,
    stepThrough,
    drivetrain,
    condition: share,
    originality: share,
    desirability: share,
    month: fc.integer({ min: 1, max: 12 }),
  },
  { requiredKeys: ["price", "kind"] },
) as fc.Arbitrary<Comparables[number]>;
const comparables = fc.oneof(
  { weight: 2, arbitrary: fc.constant<Comparables>([]) },
  { weight: 1, arbitrary: fc.array(comparable, { maxLength: 6 }) },
);

const workshop = fc.record(
  {
    hourlyGoal: money,
    speedFactor: fc.double({ min: 0.1, max: 10, noNaN: true }),
    skill: fc.constantFrom(1, 2, 3, 4),
    tools: fc.subarray(ids(service.tools)),
    fee: fc.record(
      { rate: fc.double({ min: 0, max: 0.99, noNaN: true }), fixed: money },
      { requiredKeys: [] },
    ),
    packing: money,
    sellingMinutes: minutes,
    month: fc.integer({ min: 1, max: 12 }),
    partPrices: fc.dictionary(fc.constantFrom(...ids(service.parts)), money, { maxKeys: 5 }),
    priceLevel: fc.double({ min: 0.001, max: 1e6, noNaN: true }),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<NonNullable<AppraisalBody["workshop"]>>;

/**
 * Any request whose every field is as its schema asks, from the least to the fullest and to the edges of every range.
 * The engine may still refuse it: a marking and a diameter that contradict each other, a chain shorter than new.
 */
export const anyRequest: fc.Arbitrary<AppraisalBody> = fc
  .record(
    { currency: fc.constantFrom("EUR", "SEK", "JPY"), find, observations, comparables, workshop },
    { requiredKeys: ["find"] },
  )
  .map(({ comparables: own, ...rest }) => {
    const counted = (rest.currency ?? "EUR") === "EUR" || rest.workshop?.priceLevel !== undefined;
    return own !== undefined && (counted || own.length === 0) ? { ...rest, comparables: own } : rest;
  });
