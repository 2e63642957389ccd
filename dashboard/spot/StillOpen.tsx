import type { Appraisal, Check, Reference } from "../api/types.ts";
import { capital } from "../words/count.ts";
import { stillOpenTitle, swingWords } from "../words/spot.ts";
import { askWords } from "../words/spotLooks.ts";
import { looksFold, SPOT_LOOK_NOW } from "../words/spotTexts.ts";
import { minutes } from "../words/time.ts";
import { adviceOf } from "./advice.ts";
import type { Looking } from "./useLooking.ts";

/** As many as are read at a glance. */
const MOST = 4;

interface StillOpenProps {
  readonly known: Reference;
  readonly checks: readonly Check[];
  readonly appraisal: Appraisal | null;
  readonly looking: Looking;
}

/** What can be looked at besides the card in sight: what is worth its minute, best first, and the rest folded. */
export function StillOpen({ known, checks, appraisal, looking }: StillOpenProps) {
  const { queue, look } = looking;
  const advice = adviceOf(appraisal);
  const byId = (ids: readonly string[]) =>
    [...new Set(ids)]
      .filter((id) => id !== look?.check)
      .flatMap((id) => checks.filter((check) => check.id === id));
  const worth = byId(queue.worth.map(({ check }) => check));
  const first = worth.slice(0, MOST);
  const rest = byId(queue.open.map(({ check }) => check)).filter((check) => !first.includes(check));
  const rows = (shown: readonly Check[]) =>
    shown.map((check) => {
      const swing = swingWords(advice?.of[check.id] ?? null, known.currency);
      return (
        <li key={check.id}>
          <b>{askWords(check)}</b>
          <span class="mv">{minutes(check.minutes)}</span>
          <span class="small">{swing}</span>
          <button
            type="button"
            class="plainbtn"
            onClick={() => {
              const at = queue.open.find((one) => one.check === check.id);
              if (at !== undefined) looking.reopen(at);
            }}
          >
            {SPOT_LOOK_NOW}
            <span class="sr"> {askWords(check)}</span>
          </button>
        </li>
      );
    });
  if (first.length === 0 && rest.length === 0) return null;
  return (
    <section class="panel" aria-labelledby="stillopen-title">
      <h2 id="stillopen-title">{capital(stillOpenTitle(worth.length))}</h2>
      {first.length > 0 && <ul class="lookrows">{rows(first)}</ul>}
      {rest.length > 0 && (
        <details class="others">
          <summary>{looksFold(rest.length, first.length > 0)}</summary>
          <ul class="lookrows">{rows(rest)}</ul>
        </details>
      )}
    </section>
  );
}
