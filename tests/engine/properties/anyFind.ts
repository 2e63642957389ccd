import fc from "fast-check";
import { ATTRIBUTE_VALUES, type AttributeName } from "../../../worker/engine/bicycle.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { Check, MeasuredInput } from "../../../worker/engine/inspection/check.ts";
import type { DescribedAttributes } from "../../../worker/engine/inspection/find.ts";
import type { Observation, Observations, Reading } from "../../../worker/engine/inspection/observation.ts";
import { BOOK } from "../decision/shippedBook.ts";

const { inspection, service } = BOOK.catalogue;

const value = (name: AttributeName) =>
  fc.constantFrom<string>(...ATTRIBUTE_VALUES[name].filter((one) => one !== OUT_OF_SCOPE));
const OUT_OF_SCOPE = "e-bike-out-of-scope";
/** Mostly left out, as people do. */
const seldom = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 5 });

const ALWAYS = ["category", "era", "frameMaterial", "componentTier"] as const;
const OFTEN = ["kept", "completeness"] as const;
const REST = (Object.keys(ATTRIBUTE_VALUES) as AttributeName[]).filter(
  // A denied carbon part is refused, which is another test's business.
  (name) => name !== "hasCarbon" && ![...ALWAYS, ...OFTEN].includes(name as never),
);

function record(names: readonly AttributeName[], wrap: (one: fc.Arbitrary<string>) => fc.Arbitrary<unknown>) {
  return fc.record(Object.fromEntries(names.map((name) => [name, wrap(value(name))])));
}

/** A description of any kind that is appraised, era, material, tier and completeness, with some of the rest. */
export const anyDescription = fc
  .tuple(
    record(ALWAYS, (one) => one),
    record(OFTEN, (one) => fc.option(one, { nil: undefined, freq: 1 })),
    record(REST, seldom),
  )
  .map((parts) => Object.assign({}, ...parts) as DescribedAttributes);

function measured({ unit, min, max }: MeasuredInput): fc.Arbitrary<number> {
  return unit === "count" ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
}

function reading({ id, levels, measurement }: Check): fc.Arbitrary<Reading> {
  const judged = fc.record({ level: fc.constantFrom(...levels.map((level) => level.id)) });
  // A chain shorter than new is refused as a slip; its length is drawn from new to long gone.
  if (id === "chain")
    return fc.oneof(
      judged,
      fc.double({ min: 304.8, max: 311, noNaN: true }).map((length24) => ({ measured: { length24 } })),
    );
  if (measurement === null) return judged;
  const inputs = Object.fromEntries(measurement.inputs.map((input) => [input.id, measured(input)]));
  const requiredKeys = measurement.inputs.filter(({ optional }) => !optional).map((input) => input.id);
  return fc.oneof(
    judged,
    fc.record({
      measured: fc.record(inputs, { requiredKeys }),
      flags: fc.subarray(measurement.flags.map((flag) => flag.id)),
    }) as fc.Arbitrary<Reading>,
  );
}

function observation(check: Check): fc.Arbitrary<Observation> {
  const whole = reading(check);
  return check.perWheel
    ? fc.oneof(whole, fc.record({ front: whole, rear: whole }), fc.record({ rear: whole }))
    : whole;
}

/** Some checks made, each with any outcome. */
export const anyObservations = fc
  .record(
    Object.fromEntries(
      inspection.checks.map((check) => [
        check.id,
        fc.option(observation(check), { nil: undefined, freq: 1 }),
      ]),
    ),
  )
  .map(
    (all) => Object.fromEntries(Object.entries(all).filter(([, one]) => one !== undefined)) as Observations,
  );

/** Mostly sound, some faults, none that ends the job; so many checks in ten not made. */
function likelyObservations(unmade: number): fc.Arbitrary<Observations> {
  const one = ({ levels }: Check) => {
    const sound = fc.constant<Reading | undefined>({ level: levels[0]!.id });
    const going = levels.filter(({ terminal }) => terminal === null);
    return fc.oneof(
      { weight: 6, arbitrary: sound },
      { weight: 2, arbitrary: fc.constantFrom(...going.map(({ id }) => ({ level: id }))) },
      { weight: unmade, arbitrary: fc.constant(undefined) },
    );
  };
  return fc
    .record(Object.fromEntries(inspection.checks.map((check) => [check.id, one(check)])))
    .map(
      (all) =>
        Object.fromEntries(
          Object.entries(all).filter(([, reading]) => reading !== undefined),
        ) as Observations,
    );
}

const share = fc.double({ min: 0, max: 1, noNaN: true });
const money = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 5000, noNaN: true }));
const minutes = fc.double({ min: 0, max: 600, noNaN: true });
const partIds = service.parts.map(({ id }) => id);

export const anyWorkshop = fc.record(
  {
    hourlyGoal: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 60, noNaN: true })),
    speedFactor: fc.double({ min: 0.3, max: 3, noNaN: true }),
    skill: fc.constantFrom(1, 2, 3, 4),
    tools: fc.subarray(service.tools.map(({ id }) => id)),
    fee: fc.record(
      { rate: fc.double({ min: 0, max: 0.99, noNaN: true }), fixed: money },
      { requiredKeys: [] },
    ),
    packing: money,
    sellingMinutes: minutes,
    month: fc.integer({ min: 1, max: 12 }),
    partPrices: fc.dictionary(fc.constantFrom(...partIds), money, { maxKeys: 5 }),
    priceLevel: fc.double({ min: 0.01, max: 100, noNaN: true }),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<NonNullable<AppraisalRequest["workshop"]>>;

const extras = fc.record(
  {
    desirability: share,
    originality: share,
    missingParts: fc.subarray(partIds, { maxLength: 4 }),
    purchase: fc.record(
      { price: money, paid: fc.boolean(), travelMinutes: minutes, travelCost: money },
      { requiredKeys: [] },
    ),
    soFar: fc.record({ money, minutes }, { requiredKeys: [] }),
  },
  { requiredKeys: [] },
);

const dimensions = fc.record(
  {
    rearSprockets: fc.integer({ min: 1, max: 14 }),
    beadSeatDiameterMm: fc.constantFrom(622, 559, 590, 451, 599),
  },
  { requiredKeys: [] },
);

function requests(observations: fc.Arbitrary<Observations>): fc.Arbitrary<AppraisalRequest> {
  return fc
    .record({ attributes: anyDescription, extras, dimensions, observations, workshop: anyWorkshop })
    .map(({ attributes, extras: more, dimensions: sizes, observations: seen, workshop }) => ({
      find: { ...more, attributes, dimensions: sizes },
      observations: seen,
      workshop,
    }));
}

const midJob = fc.record(
  {
    money,
    minutes,
    done: fc.subarray(
      service.operations.map(({ id }) => id),
      { maxLength: 8 },
    ),
    bought: fc.array(
      fc.record(
        { part: fc.constantFrom(...partIds), quantity: fc.constantFrom(0.5, 1, 2, 5), reuseValue: money },
        { requiredKeys: ["part"] },
      ),
      { maxLength: 4 },
    ),
  },
  { requiredKeys: [] },
);

/** Anything that can be asked, at any point of the job. */
export const anyFind = fc
  .tuple(requests(anyObservations), fc.option(midJob, { nil: undefined, freq: 2 }))
  .map(([request, soFar]) => ({ ...request, find: { ...request.find, soFar } }));
/** A find such as people bring home. */
export const likelyFind = requests(likelyObservations(1));
/** The same, looked over from end to end. */
export const seenFind = requests(likelyObservations(0));
