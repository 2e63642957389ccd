import { answered } from "../state/holds.ts";
import { keepAskingForSet, setAsking, setQuestion } from "../state/set.ts";

/** Asks for the set, and comes once that was answered, or failed: whether it was answered, or there is nothing to ask. */
export async function setStands(): Promise<boolean> {
  if (setQuestion.peek() === null) return true;
  const stop = keepAskingForSet();
  const came = await answered(setAsking);
  stop();
  return came;
}
