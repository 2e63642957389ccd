import type { Fault } from "../api/fault.ts";
import type { Reference } from "../api/types.ts";
import { useLater } from "../parts/useLater.ts";

interface RefusedWorkProps {
  /** Id of the find. */
  readonly id: string;
  readonly known: Reference;
  readonly fault: Fault | null;
}

const laterPanels = () => import("./laterPanels.ts");

/**
 * The job so far alone, where a figure of it is refused and there is no answer yet: it was kept, and nowhere else could it
 * be mended.
 */
export function RefusedWork({ id, known, fault }: RefusedWorkProps) {
  const isItsFault =
    fault?.kind === "refused" && fault.fields.some(({ pointer }) => pointer.startsWith("/find/soFar"));
  return isItsFault ? <Panel id={id} known={known} fault={fault} /> : null;
}

function Panel(props: RefusedWorkProps) {
  const { loaded } = useLater(laterPanels);
  return loaded === null ? null : <loaded.WorkBegun {...props} appraisal={null} course={undefined} />;
}
