import type { Find } from "../finds/find.ts";
import { copyToAsk } from "../state/compared.ts";
import { COPY_IT, COPYING } from "../words/copying.ts";

interface CopyButtonProps {
  readonly find: Find;
  /** One of several such buttons: it names its find in place of what a copy is for. */
  readonly among?: boolean;
  /** Where the copy is opened. */
  readonly page?: "describe" | "spot";
}

/** Copies a find, to change one answer and see both side by side. */
export function CopyButton({ find, among = false, page = "describe" }: CopyButtonProps) {
  return (
    <button type="button" class={among ? "plainbtn" : "btn quiet"} onClick={() => copyToAsk(find, page)}>
      {among ? (
        <>
          {COPY_IT}
          <span class="sr">: {find.name}</span>
        </>
      ) : (
        COPYING
      )}
    </button>
  );
}
