import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { Report } from "../../../worker/engine/decision/appraise.ts";
import { appliesTo } from "../../../worker/engine/inspection/applicability.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { type Evidence, TRIGGERS } from "./cautionTriggers.ts";

/** Cautions whose trigger holds for an answer, "kind id", in the order of their ids. */
export function expectedCautions(request: AppraisalRequest, answer: Report): string[] {
  const evidence = evidenceIn(request, answer);
  return Object.entries(TRIGGERS)
    .flatMap(([id, trigger]) => {
      const kind = trigger(evidence);
      return kind === null ? [] : [`${kind} ${id}`];
    })
    .sort();
}

/** Cautions raised, in the same form. */
export function raisedCautions({ cautions }: Pick<Report, "cautions">): string[] {
  return cautions.map(({ id, kind }) => `${kind} ${id}`).sort();
}

function evidenceIn({ find, workshop }: AppraisalRequest, answer: Report): Evidence {
  const { inspection, defaults } = BOOK.catalogue;
  const attributes = settleAttributes(find.attributes, inspection.attributeDefaults);
  const skill = workshop?.skill ?? defaults.skill;
  const answered = new Set(
    answer.findings.filter(({ position }) => position === "bike").map(({ check }) => check),
  );
  // What finished work has cured no longer stands.
  const standing = answer.findings.filter(({ curedBy }) => curedBy.length === 0);
  const open = answer.courses.filter(({ available }) => available);
  const planned = open.flatMap(({ plan }) => plan!.operations);
  return {
    attributes,
    skill,
    found: new Set(standing.map(({ check, level }) => `${check}:${level}`)),
    unmade: new Set(
      inspection.checks
        .filter((check) => appliesTo(check, attributes) && !answered.has(check.id))
        .map(({ id }) => id),
    ),
    blocked: standing.some(({ safety }) => safety === "block"),
    open: new Set(open.map(({ course }) => course)),
    work: new Set(planned.map(({ operation }) => operation)),
    bought: new Set(planned.flatMap(({ parts }) => parts.map(({ part }) => part))),
    outOfDepth: planned.some(({ operation }) => {
      const row = BOOK.service.operations.get(operation)!;
      return row.safetyCritical && row.doneBy === "self" && row.skill > skill;
    }),
  };
}
