import { Bench } from "../stand/Bench.tsx";
import { rootOf } from "../stand/useBench.ts";
import { finds } from "../state/finds.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import "../style/stand.css";
import { Unknown, Waiting } from "./findStates.tsx";

/** What is wrong with it? One find on the stand. */
export function StandPage() {
  const here = route.value;
  const known = reference.value;
  if (here.page !== "stand" || known === null || finds.value.length === 0) return <Waiting />;
  const find = finds.value.find(({ id }) => id === here.id);
  if (find === undefined) return <Unknown />;
  // The copy made by the first answer takes its original's place with everything that was unfolded.
  return <Bench key={rootOf(find)} find={find} known={known} />;
}
