import { useRef } from "preact/hooks";
import { Bench } from "../stand/Bench.tsx";
import { rootOf } from "../stand/useBench.ts";
import { askingOf, finds } from "../state/finds.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import "../style/stand.css";
import { Unknown, Waiting } from "./findStates.tsx";

/** What is wrong with it? One find on the stand. */
export function StandPage() {
  const here = route.value;
  const known = reference.value;
  const begun = useRef<string | null>(null);
  if (here.page !== "stand" || known === null || finds.value.length === 0) return <Waiting />;
  const find = finds.value.find(({ id }) => id === here.id);
  if (find === undefined) return <Unknown />;
  // The first answer brings heading, work and what stands in the way: until then there is nothing that they could push down.
  const asking = askingOf(find.id);
  if (begun.current !== rootOf(find) && asking.answer.value === null && asking.fault.value === null)
    return <Waiting />;
  begun.current = rootOf(find);
  // The copy made by the first answer takes its original's place with everything that was unfolded.
  return <Bench key={rootOf(find)} find={find} known={known} />;
}
