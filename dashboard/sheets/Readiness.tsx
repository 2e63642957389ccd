import type { Appraisal } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { readyRows } from "../words/ready.ts";
import {
  BEFORE_RIDING_CURED,
  BEFORE_RIDING_LOOKED,
  BEFORE_RIDING_PAPER,
  BEFORE_RIDING_TITLE,
  toTick,
} from "../words/readySheet.ts";
import { beforeRiding, FINAL_CHECK, SCREENS } from "../words/sheets.ts";
import { Box } from "./Box.tsx";

/** What must be cleared before anyone rides it. */
export function Readiness({ appraisal, names }: { appraisal: Appraisal; names: Names }) {
  const { readiness, looked } = appraisal;
  const owed = readiness.owed.filter((id) => !readiness.blocking.includes(id));
  const { ride } = readyRows(readiness, names.isPaper);
  return (
    <div class="readiness">
      <h2>{BEFORE_RIDING_TITLE}</h2>
      <p>{beforeRiding({ ...readiness, blocking: ride.blocking }, looked.applicable - looked.made)}</p>
      <ul class="boxlist one">
        {readiness.blocking.map((id) => (
          <Line
            key={id}
            text={toTick(names.check(id), names.isPaper(id) ? BEFORE_RIDING_PAPER : BEFORE_RIDING_CURED)}
          />
        ))}
        {owed.map((id) => (
          <Line key={id} text={toTick(names.check(id), BEFORE_RIDING_LOOKED)} />
        ))}
        <Line text={FINAL_CHECK} />
      </ul>
      <p>{SCREENS}</p>
    </div>
  );
}

function Line({ text }: { text: string }) {
  return (
    <li>
      <Box />
      <span>{text}</span>
    </li>
  );
}
