import type { Check } from "../../../worker/engine/inspection/check.ts";
import type { Playbook, Response } from "./playbook.ts";
import type { Planned } from "./walk.ts";

/** What a level of a hidden check asks for, ready to be done. */
export interface Ready {
  readonly kind: Response["kind"];
  /** Cures that may end the frame, and the others. */
  readonly risky: readonly Planned[];
  readonly cures: readonly Planned[];
  readonly spared: readonly Planned[];
  readonly penalty: number;
}

/** A hidden check whose level may ask for something. */
export interface Question {
  readonly place: number;
  readonly byRank: readonly (Ready | null)[];
  /** Steps to take before it shows. */
  readonly opening: readonly number[];
  /** What is decided once it shows; null where nothing is. */
  readonly outcomes: ReadonlyMap<number, number> | null;
}

/**
 * @param place of the check among the hidden ones
 * @param plan the jobs of the course's plan
 * @param planned makes a job that is ordered
 */
export function questionOf(
  check: Check,
  place: number,
  responses: ReadonlyMap<number, Response>,
  { decisions }: Playbook,
  plan: readonly Planned[],
  planned: (ordered: Extract<Response, { kind: "cured" }>["by"][number]) => Planned,
): Question {
  const decision = decisions.find(({ of, job }) => of === check.id && job === null);
  const reveals = ({ job: { operation } }: Planned) =>
    operation.reveals.some((one) => one.check === check.id);
  const revealing = check.where === "dismantled" ? plan.filter(reveals) : [];
  return {
    place,
    byRank: check.levels.map(({ conditionPenalty }, rank) => {
      const response = responses.get(rank);
      return response ? readyFor(response, conditionPenalty, plan, planned) : null;
    }),
    opening: revealing.flatMap(({ job }) => job.steps),
    outcomes: decision?.outcome ?? null,
  };
}

function readyFor(
  response: Response,
  penalty: number,
  plan: readonly Planned[],
  planned: Parameters<typeof questionOf>[5],
): Ready {
  const cures = response.kind === "cured" ? response.by.map(planned) : [];
  const mayEnd = ({ job: { failure, operation } }: Planned) =>
    failure !== null && operation.failure!.redecide;
  const spared = response.kind === "spared" ? response.tasks : [];
  return {
    kind: response.kind,
    risky: cures.filter(mayEnd),
    cures: cures.filter((one) => !mayEnd(one)),
    spared: plan.filter(({ job }) => spared.includes(job.operation.id)),
    penalty: response.kind === "told" ? penalty : 0,
  };
}
