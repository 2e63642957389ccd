import type { Appraisal, Check, Reference } from "../api/types.ts";
import { money, roundMoney } from "../words/money.ts";
import { askWords } from "../words/spotLooks.ts";
import { minutes } from "../words/time.ts";
import { adviceOf } from "./advice.ts";
import { sameLook } from "./trail.ts";
import type { Looking } from "./useLooking.ts";

/** As many as are read at a glance. */
const MOST = 5;

interface StillOpenProps {
  readonly known: Reference;
  readonly checks: readonly Check[];
  readonly appraisal: Appraisal | null;
  readonly looking: Looking;
}

/** What comes after the card in sight: the looks that are worth their minute, best first. */
export function StillOpen({ known, checks, appraisal, looking }: StillOpenProps) {
  const { queue, look } = looking;
  const advice = adviceOf(appraisal);
  const ids = new Set(
    queue.worth.filter((one) => look === null || !sameLook(one, look)).map(({ check }) => check),
  );
  ids.delete(look?.check ?? "");
  const next = [...ids].slice(0, MOST).flatMap((id) => checks.filter((check) => check.id === id));
  if (next.length === 0) return null;
  return (
    <section class="panel stillopen" aria-labelledby="stillopen-title">
      <h2 id="stillopen-title">Still open, and worth a minute</h2>
      <ul class="done">
        {next.map((check) => {
          const swing = advice?.of[check.id]?.offerSwing ?? null;
          return (
            <li key={check.id}>
              <b>{askWords(check)}</b>
              <span class="mv">{minutes(check.minutes)}</span>
              {swing !== null && roundMoney(swing) >= 1 && (
                <span class="small">Could move your offer by {money(swing, known.currency)}.</span>
              )}
            </li>
          );
        })}
      </ul>
      {ids.size > MOST && <p class="small">And {ids.size - MOST} more.</p>}
    </section>
  );
}
