import type { Appraisal } from "../api/types.ts";
import { counted } from "./count.ts";
import { money } from "./money.ts";
import { hours } from "./time.ts";

type Spent = Pick<Appraisal["soFar"], "money" | "hours">;

/** "€30 and 2 h"; empty where nothing was spent. */
function amounts({ money: spent, hours: worked }: Spent, currency: string): string {
  return [spent > 0 ? money(spent, currency) : "", worked > 0 ? hours(worked) : ""]
    .filter((part) => part !== "")
    .join(" and ");
}

/** "Already spent €30 and 2 h"; null where nothing was. */
export function spentWords(spent: Spent, currency: string): string | null {
  const told = amounts(spent, currency);
  return told === "" ? null : `Already spent ${told}`;
}

/** The job so far in a few words: "three jobs done, one part bought, €30 and 2 h spent"; "nothing yet". */
export function begunWords(
  {
    done,
    bought,
    ...spent
  }: Spent & { readonly done: readonly unknown[]; readonly bought: readonly unknown[] },
  currency: string,
): string {
  const told = amounts(spent, currency);
  const parts = [
    done.length > 0 ? `${counted(done.length, "job")} done` : "",
    bought.length > 0 ? `${counted(bought.length, "part")} bought` : "",
    told === "" ? "" : `${told} spent`,
  ].filter((part) => part !== "");
  return parts.length === 0 ? "nothing yet" : parts.join(", ");
}
