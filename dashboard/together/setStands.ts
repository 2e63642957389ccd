import { answered } from "../state/holds.ts";
import { keepAskingForSet, setAsking, setQuestion } from "../state/set.ts";

/** Asks for the set, and comes once that was answered, or failed, or there is nothing to ask. */
export async function setStands(): Promise<void> {
  if (setQuestion.peek() === null) return;
  const stop = keepAskingForSet();
  await answered(setAsking);
  stop();
}
