import type { Find } from "../finds/find.ts";
import { copyToAsk } from "../state/compared.ts";
import { COPY_IT, COPY_TO_ASK } from "../words/copyFind.ts";

/**
 * Copies a find, to change one answer and see both side by side.
 * @param among one of several such buttons: it names its find in place of what a copy is for
 */
export function CopyButton({ find, among = false }: { find: Find; among?: boolean }) {
  return (
    <button type="button" class={among ? "plainbtn" : "btn quiet"} onClick={() => copyToAsk(find)}>
      {among ? (
        <>
          {COPY_IT}
          <span class="sr">: {find.name}</span>
        </>
      ) : (
        COPY_TO_ASK
      )}
    </button>
  );
}
