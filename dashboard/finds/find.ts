import type { AppraisalBody } from "../api/types.ts";

/** A find on the chart, whoever it belongs to. */
export interface Find {
  readonly id: string;
  /** As a heading or a link: "Plum hybrid". */
  readonly name: string;
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  /** Where it turned up; empty where nobody said. */
  readonly where: string;
  /** One line about it; empty where nobody said. */
  readonly line: string;
  /** From the invented demo, rather than the user's own. */
  readonly invented: boolean;
  /** Id of the find it was copied from, to ask what if. */
  readonly copyOf?: string;
  /** The question it puts to the API, without the goal. */
  readonly body: AppraisalBody;
}

/** The question with the user's goal in it. */
export function withGoal(body: AppraisalBody, hourlyGoal: number): AppraisalBody {
  return { ...body, workshop: { ...body.workshop, hourlyGoal } };
}
