import { Trouble } from "../parts/Trouble.tsx";
import { askingOf, finds } from "../state/finds.ts";
import { WORKING } from "../words/common.ts";

/** What is under way, and what went wrong, for all finds together. */
export function Progress() {
  const all = finds.value.map(({ id }) => askingOf(id));
  const slow = all.some(({ status }) => status.value === "slow");
  const faults = all.flatMap(({ fault }) => (fault.value === null ? [] : [fault.value]));
  const general = faults.find(({ kind }) => kind !== "refused");
  const again = () => {
    for (const asking of all) if (asking.fault.peek() !== null) asking.again();
  };
  return (
    <>
      <p class="working" role="status">
        {slow ? WORKING : ""}
      </p>
      {general !== undefined && <Trouble fault={general} again={again} />}
    </>
  );
}
