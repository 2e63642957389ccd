import fc from "fast-check";
import { holds } from "../../../worker/engine/bicycle.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { appliesTo } from "../../../worker/engine/inspection/applicability.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import type { Check, Safety } from "../../../worker/engine/inspection/check.ts";
import type { Observation, Observations } from "../../../worker/engine/inspection/observation.ts";
import { remediesAt } from "../../../worker/engine/service/serviceIndex.ts";
import { plainAnswer } from "../decision/plainAnswer.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { anyDescription, anyWorkshop } from "./anyFind.ts";

/** The same find twice, one ordered check of it at a worse level the second time, everything else seen. */
export interface WorseFinding {
  readonly check: string;
  readonly milder: AppraisalRequest;
  readonly worse: AppraisalRequest;
}

const { checks, attributeDefaults } = BOOK.catalogue.inspection;

/** Ordered by degree; papers are not repaired. */
const BY_DEGREE = checks.filter(({ ordered, group }) => ordered && group !== "paperwork");

/** A level that ends the job, or that a test must decide, is an answer of another sort. */
const plain = ({ levels }: Check) =>
  levels.flatMap(({ terminal }, rank) => (terminal === null ? [rank] : []));

const drawn = fc.record({
  attributes: anyDescription,
  workshop: anyWorkshop,
  originality: fc.constantFrom(0, 0.5, 0.8, 1),
  /** One fault in so many checks. */
  faults: fc.constantFrom(30, 10, 4, 2),
  dice: fc.array(fc.nat(), { minLength: checks.length, maxLength: checks.length }),
  check: fc.constantFrom(...BY_DEGREE),
  from: fc.nat(),
  to: fc.nat(),
  otherWheel: fc.option(fc.nat(), { nil: undefined, freq: 1 }),
});

/** Any bike, looked over from end to end, and one fault that is worse the second time: neither severity nor safety falls. */
export const worseFinding: fc.Arbitrary<WorseFinding> = drawn
  .map(({ attributes, workshop, originality, faults, dice, check, from, to, otherWheel }) => {
    const settled = settleAttributes(attributes, attributeDefaults);
    const seen = checks.flatMap((one, index): [string, Observation][] => {
      const ranks = plain(one);
      const die = dice[index]!;
      const rank = die % faults === 0 ? ranks[Math.floor(die / faults) % ranks.length]! : 0;
      return appliesTo(one, settled) ? [[one.id, { level: one.levels[rank]!.id }]] : [];
    });
    const ranks = check.levels
      .map((_, rank) => rank)
      .filter((rank) => check.levels[rank]!.terminal !== "decide-first");
    const low = from % (ranks.length - 1);
    const high = low + 1 + (to % (ranks.length - 1 - low));
    const at = (rank: number): Observation => {
      const reading = { level: check.levels[ranks[rank]!]!.id };
      if (!check.perWheel || otherWheel === undefined) return reading;
      return { front: { level: check.levels[otherWheel % check.levels.length]!.id }, rear: reading };
    };
    const request = (rank: number): AppraisalRequest => ({
      find: { attributes, dimensions: {}, originality },
      observations: { ...Object.fromEntries(seen), [check.id]: at(rank) } as Observations,
      workshop,
    });
    return {
      check,
      settled,
      milder: request(low),
      worse: request(high),
      ranks: [ranks[low]!, ranks[high]!] as const,
    };
  })
  .filter(({ check, settled, milder, worse, ranks: [low, high] }) => {
    const safety = (rank: number) => ORDER[safetyOn(check, rank, settled)];
    return (
      appliesTo(check, settled) &&
      safety(high) >= safety(low) &&
      check.levels[high]!.severity >= check.levels[low]!.severity &&
      isExplained(milder, settled) &&
      isExplained(worse, settled)
    );
  })
  .map(({ check, milder, worse }) => ({ check: check.id, milder, worse }));

const ORDER: Readonly<Record<Safety, number>> = { none: 0, owed: 0, advisory: 1, block: 2 };

function safetyOn(
  { levels, adjustments }: Check,
  rank: number,
  attributes: Parameters<typeof holds>[1],
): Safety {
  const { id, safety } = levels[rank]!;
  return adjustments.find((row) => row.level === id && holds(row.when, attributes))?.safety ?? safety;
}

/** Brakes that fail have a part that fails. Finding the cause of a fault that nothing explained saves work, and that is no worse news. */
function isExplained({ observations }: AppraisalRequest, attributes: Parameters<typeof holds>[1]): boolean {
  const { level } = observations["brake-function"] as { level: string };
  if (level === "strong") return true;
  const rows = remediesAt(BOOK.service, "brake-function", level);
  const causes = rows.filter(({ when }) => holds(when, attributes)).flatMap((row) => row.causes);
  return causes.some(({ check, levels }) => levels.some((one) => shows(observations[check], one)));
}

function shows(observation: Observation | undefined, level: string): boolean {
  return observation !== undefined && JSON.stringify(observation).includes(`"level":"${level}"`);
}

/**
 * What a worse finding may spare: a stuck post is not greased. The cost of that work at the goal, no more.
 */
export function sparedWork(check: string, milder: AppraisalRequest, goal: number): number {
  if (check !== "seatpost-free") return 0;
  const { courses } = plainAnswer(milder);
  const tasks = courses
    .flatMap(({ plan }) => plan?.operations ?? [])
    .filter(({ operation }) => operation === "grease-post");
  const steps = courses
    .flatMap(({ plan }) => plan?.sharedSteps ?? [])
    .filter(({ step }) => step === "seatpost-out");
  const [task] = tasks;
  if (!task) return 0;
  const parts = task.parts.reduce((sum, { quantity, price }) => sum + quantity * price, 0);
  return parts + ((task.minutes + (steps[0]?.minutes ?? 0)) * goal) / 60;
}
