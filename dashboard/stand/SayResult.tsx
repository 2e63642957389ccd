import type { Names } from "../find/names.ts";
import { STAND_UNTIL_TOLD } from "../words/standTexts.ts";
import { RESULT_UNTOLD, sayResult } from "../words/untold.ts";

/** Under a test or a query that is done: its result is not told yet, with the way to the checks where it is. */
export function SayResult(props: {
  checks: readonly string[];
  names: Names;
  onCheck: (check: string) => void;
}) {
  const { checks, names, onCheck } = props;
  return (
    <div class="decide">
      {RESULT_UNTOLD} {STAND_UNTIL_TOLD}
      <span class="acts">
        {checks.map((check) => (
          <button key={check} type="button" class="btn quiet" onClick={() => onCheck(check)}>
            {sayResult(names.check(check))}
          </button>
        ))}
      </span>
    </div>
  );
}
