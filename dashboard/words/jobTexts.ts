/** Texts of the jobs of a plan as they are ticked off. */
export const JOB_DONE = "done";
export const JOB_NOT_DONE = "not done";
export const JOB_LESS = "Less";
export const JOB_HOW = "How";
export const JOB_DECIDE_AGAIN = "Decide again here.";
export const JOB_TICK =
  "Tick a job once it is finished and held, at every wheel it concerns. Work that failed is a discovery: answer its check instead.";
export const JOB_SPENT_ON_ITS_PAGE = "Money and hours spent are told on its page";

/** "Answer: chain elongation". */
export function answerCheck(name: string): string {
  return `Answer: ${name}`;
}
