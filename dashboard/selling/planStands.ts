import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { answered } from "../state/holds.ts";
import { reference } from "../state/reference.ts";
import { sellingAskingOf, sellingTerms } from "../state/selling.ts";
import { planGround } from "./planGround.ts";

/** Asks for the price plan of a find that has its answer: whether it was answered, or none can be asked for. */
export async function planStands(id: string): Promise<boolean> {
  const find = finds.peek().find((one) => one.id === id);
  const known = reference.peek();
  const hourlyGoal = goal.peek();
  if (find === undefined || known === null || hourlyGoal === null) return false;
  const { seller, bikes } = sellingTerms.kept.peek();
  const asking = askingOf(id);
  const { question } = planGround({
    find,
    known,
    goal: hourlyGoal,
    answer: asking.answer.peek(),
    appraised: asking.answered.peek() ?? find.body,
    terms: { seller, bike: bikes[id] ?? {} },
    offer: null,
  });
  if (question === null) return true;
  const plan = sellingAskingOf(id);
  plan.ask(question, 0);
  return answered(plan);
}
