import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Appraisal, AppraisalBody } from "../../../dashboard/api/types.ts";
import { applicable, settled } from "../../../dashboard/checks/applies.ts";
import { draftText } from "../../../dashboard/listing/draft.ts";
import { jobKey } from "../../../dashboard/listing/jobs.ts";
import { listingDraft } from "../../../dashboard/listing/listingDraft.ts";
import { remainingFaults } from "../../../dashboard/listing/remainingFaults.ts";
import { courseOf, isRideable, offeredStates } from "../../../dashboard/listing/saleStates.ts";
import { appraised } from "../fixtures/service.ts";
import { BANNED, HYBRID, reference } from "./listing.ts";

const FINDS: readonly AppraisalBody["find"][] = [
  HYBRID,
  { category: "road-racing", era: "1980s", frameMaterial: "steel", componentTier: "upper" },
  {
    category: "city-roadster",
    year: 1962,
    frameMaterial: "steel",
    componentTier: "mid",
    brakeType: "rim-rod",
  },
  {
    category: "childrens",
    era: "2020s",
    frameMaterial: "aluminium",
    componentTier: "entry",
    brakeType: "coaster",
  },
  {
    category: "mountain-suspension",
    era: "2010s",
    frameMaterial: "carbon",
    componentTier: "top",
    frameSizeMm: 480,
  },
];

/** A bike of one of a few kinds; each check not looked at, sound (nearly always, or no bike is ever without a block) or at any level, at both wheels or at one. */
const bodies: fc.Arbitrary<AppraisalBody> = fc.constantFrom(...FINDS).chain((find) => {
  const checks = applicable(reference.checks, settled(find, reference.attributeDefaults));
  const level = (levels: readonly { id: string }[]) =>
    fc.oneof(
      { weight: 30, arbitrary: fc.constant(levels[0]?.id ?? "") },
      { weight: 1, arbitrary: fc.constantFrom(...levels.map(({ id }) => id)) },
    );
  const answers = checks.map(({ perWheel, levels }) => {
    const one = level(levels).map((id) => ({ level: id }));
    const seen = perWheel
      ? fc.oneof(
          one,
          one.map((front) => ({ front })),
          fc.tuple(one, one).map(([front, rear]) => ({ front, rear })),
        )
      : one;
    return fc.option(seen, { freq: 20 });
  });
  return fc.tuple(...answers).map((given) => ({
    find,
    observations: Object.fromEntries(
      given.flatMap((one, i) => (one === null ? [] : [[checks[i]?.id ?? "", one]])),
    ),
  }));
});

/** Each state that is offered, with some jobs of its plan left undone. */
async function everyState(
  body: AppraisalBody,
  skipped: readonly number[],
  see: (given: {
    answer: Appraisal;
    state: ReturnType<typeof offeredStates>[number];
    undone: Set<string>;
  }) => void,
) {
  const answer = await appraised(body);
  for (const state of offeredStates(answer)) {
    const jobs = courseOf(state, answer.courses)?.plan?.operations ?? [];
    const undone = skipped.flatMap((n) => {
      const job = jobs[n % Math.max(1, jobs.length)];
      return job === undefined ? [] : [jobKey(job)];
    });
    see({ answer, state, undone: new Set(undone) });
  }
}

const skips = fc.array(fc.nat(30), { maxLength: 3 });
const isPaper = (id: string) => reference.checks.find((check) => check.id === id)?.group === "paperwork";

describe("whatever was found on a bike, in every state it may be sold in", () => {
  test("the listing warns of what stops riding, names every fault that remains, counts the checks not made, and praises nothing", async () => {
    let drafts = 0;
    let clear = 0;
    await fc.assert(
      fc.asyncProperty(bodies, skips, async (body, skipped) => {
        await everyState(body, skipped, ({ answer, state, undone }) => {
          const draft = listingDraft({ answer, body, reference, state, undone });
          const plan = courseOf(state, answer.courses)?.plan ?? null;
          const remaining = remainingFaults(answer, { plan, undone }, reference.checks);
          const blocking = remaining.filter(({ safetyBlock }) => safetyBlock);
          if (draft.kind === "refused") {
            expect(blocking.some(({ check }) => isPaper(check))).toBe(true);
            expect(draft.why).toMatch(/^No draft\./);
            return;
          }
          drafts += 1;
          const text = draftText(draft);
          expect(text).not.toMatch(BANNED);
          expect(text).not.toMatch(/[{}]|undefined|NaN/);
          const owed = answer.readiness.owed.some((id) => !isPaper(id));
          if (blocking.length > 0 || owed || state === "parts") {
            expect(draft.title).toMatch(/^Not roadworthy/);
            expect(draft.opening[0]).toMatch(/^Not roadworthy: .*not to be ridden/);
            expect(text).not.toMatch(/First ride/);
          }
          if (/^No fault that stops riding/.test(draft.opening[0] ?? ""))
            expect(answer.readiness.blocking.filter((id) => !isPaper(id))).toEqual([]);
          if (!/^Not roadworthy/.test(draft.title)) clear += 1;
          for (const { note } of remaining) expect(text).toContain(note);
          const open = answer.looked.applicable - answer.looked.made;
          const listed = draft.sections.find(({ id }) => id === "checks")?.items ?? [];
          if (open > 0) expect(text).toMatch(new RegExp(`(^|\\n)${open} checks? not made:\\n`));
          // The defaults that settle a description follow its era, which the service reads off a year.
          if (body.find.year === undefined) expect(listed).toHaveLength(open);
        });
      }),
      { numRuns: 75, seed: 7 },
    );
    expect(drafts).toBeGreaterThan(200);
    expect(clear).toBeGreaterThan(0);
  });

  test("a fault is gone only by a job that was done: without any work all of them remain, with all of it none that stops riding", async () => {
    await fc.assert(
      fc.asyncProperty(bodies, async (body) => {
        await everyState(body, [], ({ answer, state }) => {
          const plan = courseOf(state, answer.courses)?.plan ?? null;
          const faults = answer.findings.filter(({ severity }) => severity > 0);
          const all = new Set((plan?.operations ?? []).map(jobKey));
          expect(remainingFaults(answer, { plan, undone: all }, reference.checks)).toEqual(faults);
          expect(remainingFaults(answer, { plan: null, undone: new Set() }, reference.checks)).toEqual(
            faults,
          );
          if (!isRideable(state)) return;
          const left = remainingFaults(answer, { plan, undone: new Set() }, reference.checks);
          expect(left.filter(({ safetyBlock }) => safetyBlock)).toEqual([]);
        });
      }),
      { numRuns: 50, seed: 11 },
    );
  });
});
