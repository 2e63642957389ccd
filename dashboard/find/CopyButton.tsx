import type { Find } from "../finds/find.ts";
import { copyToAsk } from "../state/compared.ts";

/** Copies a find, to change one answer and see both side by side. */
export function CopyButton({ find, plain = false }: { find: Find; plain?: boolean }) {
  return (
    <button type="button" class={plain ? "plainbtn" : "btn quiet"} onClick={() => copyToAsk(find)}>
      Copy to ask what if{plain && <span class="sr">: {find.name}</span>}
    </button>
  );
}
