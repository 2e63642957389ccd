import { useState } from "preact/hooks";
import type { Appraisal, AppraisalBody, Reference } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { Trouble } from "../parts/Trouble.tsx";
import { useLater } from "../parts/useLater.ts";
import { FIND_PRINT, FIND_SHARE } from "../words/findPanels.ts";

interface ShareAndPrintProps {
  readonly find: Find;
  readonly known: Reference;
  /** Null while there is no answer yet: then there is nothing to print. */
  readonly answered: { readonly appraisal: Appraisal; readonly body: AppraisalBody } | null;
  readonly ownParts: ReadonlySet<string>;
}

const dialogs = () => import("./laterDialogs.ts");

/** Passing a find on, and taking it to the bench on paper. What it takes is fetched when it is first wanted. */
export function ShareAndPrint(props: ShareAndPrintProps) {
  const [open, setOpen] = useState<"share" | "print" | null>(null);
  return (
    <div class="acts">
      <button type="button" class="btn quiet" onClick={() => setOpen("share")}>
        {FIND_SHARE}
      </button>
      {props.answered !== null && (
        <button type="button" class="btn quiet" onClick={() => setOpen("print")}>
          {FIND_PRINT}
        </button>
      )}
      {open !== null && <Opened {...props} open={open} onClose={() => setOpen(null)} />}
    </div>
  );
}

function Opened(props: ShareAndPrintProps & { open: "share" | "print"; onClose: () => void }) {
  const { open, answered, ...rest } = props;
  const { loaded, failed, again } = useLater(dialogs);
  if (failed) return <Trouble fault={{ kind: "no-signal" }} again={again} />;
  if (loaded === null) return null;
  if (open === "share") return <loaded.ShareDialog {...rest} />;
  return answered === null ? null : <loaded.PrintDialog {...rest} {...answered} />;
}
