import { messagesAt } from "../api/fault.ts";
import type { Reference } from "../api/types.ts";
import { Trouble } from "../parts/Trouble.tsx";
import type { FindAsking } from "../state/finds.ts";
import { refusal } from "../words/refusal.ts";
import type { Look } from "./trail.ts";

interface SpotTroubleProps {
  readonly asking: FindAsking;
  readonly known: Reference;
  /** The look of the card in sight, which shows its own refusals. */
  readonly look: Look | null;
}

/** Why there is no newer answer, where neither the card nor the bar says it already. */
export function SpotTrouble({ asking, known, look }: SpotTroubleProps) {
  const fault = asking.fault.value;
  if (fault === null) return null;
  // The bar says it in a line, and the last answer stands beside it.
  if (fault.kind === "no-signal" && asking.answer.value !== null) return null;
  if (fault.kind === "refused" && look !== null) {
    const own = messagesAt(fault, `/observations/${look.check}`).length;
    if (own > 0 && own === fault.fields.length) return null;
  }
  return <Trouble fault={fault} again={asking.again} say={(field) => refusal(field, known.checks)} />;
}
