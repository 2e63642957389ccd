/** Texts of the jobs of a plan as they are ticked off. */
export const JOB_TEXTS = {
  done: "done",
  notDone: "not done",
  less: "Less",
  how: "How",
  decideAgain: "Decide again here.",
  tick: "Tick a job once it is finished and held, at every wheel it concerns. Work that failed is a discovery: answer its check instead.",
  spentOnItsPage: "Money and hours spent are told on its page",
} as const;

/** "Answer: chain elongation". */
export function answerCheck(name: string): string {
  return `Answer: ${name}`;
}
