import type { Candidate, CandidateOption } from "./candidate.ts";

/** A candidate with the course that the set gives it. */
export interface Taken {
  readonly candidate: Candidate;
  readonly option: CandidateOption;
}

export function isLeft({ course }: CandidateOption): boolean {
  return course.course === "leave";
}
