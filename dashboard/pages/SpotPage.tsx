import "../style/spot.css";
import { useRef } from "preact/hooks";
import { newOwnFind } from "../finds/own.ts";
import { Heading } from "../parts/Heading.tsx";
import { OnTheSpot } from "../spot/OnTheSpot.tsx";
import { ownFinds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import { SPOT_TITLE } from "../words/spot.ts";

/** Take it, and for how much? Asked beside the bike: four picks, then one look at a time. */
export function SpotPage() {
  const here = route.value;
  const id = here.page === "spot" ? here.id : null;
  const fresh = useRef(newOwnFind());
  const known = reference.value;
  const hourlyGoal = goal.value;
  const kept = id === null ? undefined : ownFinds.all.value.find((find) => find.id === id);
  if (known === null || hourlyGoal === null) {
    return (
      <main class="page" id="main" aria-busy="true">
        <Heading title={SPOT_TITLE}>{SPOT_TITLE}</Heading>
      </main>
    );
  }
  if (id !== null && kept === undefined) {
    return (
      <main class="page" id="main">
        <Heading title="No such find">There is no find of yours by that name in this browser.</Heading>
        <p>
          <a href="/spot">Look at a bike</a>
        </p>
      </main>
    );
  }
  // A new find gets its id before its first answer, so that the page stays the same when it gets its address.
  if (kept === undefined && ownFinds.get(fresh.current.id) !== undefined) fresh.current = newOwnFind();
  const own = kept ?? fresh.current;
  return <OnTheSpot key={own.id} own={own} isNew={kept === undefined} known={known} goal={hourlyGoal} />;
}
