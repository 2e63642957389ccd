import type { FunctionComponent } from "preact";
import { useRef } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { newOwnFind, type OwnFind } from "../finds/own.ts";
import { ownFinds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import { NO_SUCH_FIND_YOURS } from "../words/noFindOfYours.ts";
import { NO_SUCH_FIND_TITLE } from "../words/placeNames.ts";
import { Heading } from "./Heading.tsx";

/** One's own find as a form opens it. */
export interface OpenedProps {
  readonly own: OwnFind;
  /** Nothing was said about it yet: it is kept, and gets its address, with the first answer. */
  readonly isNew: boolean;
  readonly known: Reference;
  /** What one more hour must earn. */
  readonly goal: number;
}

interface OwnFindPageProps {
  /** The page whose address names the find, or none for a new one. */
  readonly page: "describe" | "spot";
  /** Heading before the catalogue has come. */
  readonly title: string;
  /** Words of the link to a new one, where the address names a find that is not kept here. */
  readonly begin: string;
  readonly form: FunctionComponent<OpenedProps>;
}

/** The find of one's own that the address names, or a new one, in a form. */
export function OwnFindPage({ page, title, begin, form: Form }: OwnFindPageProps) {
  const here = route.value;
  const id = here.page === page ? here.id : null;
  const fresh = useRef(newOwnFind());
  const known = reference.value;
  const hourlyGoal = goal.value;
  const kept = id === null ? undefined : ownFinds.all.value.find((find) => find.id === id);
  if (known === null || hourlyGoal === null) {
    return (
      <main class="page" id="main" aria-busy="true">
        <Heading title={title}>{title}</Heading>
      </main>
    );
  }
  if (id !== null && kept === undefined) {
    return (
      <main class="page" id="main">
        <Heading title={NO_SUCH_FIND_TITLE}>{NO_SUCH_FIND_YOURS}</Heading>
        <p>
          <a href={`/${page}`}>{begin}</a>
        </p>
      </main>
    );
  }
  // A new find gets its id before its first answer, so that the form stays the same when it gets its address.
  if (kept === undefined && ownFinds.get(fresh.current.id) !== undefined) fresh.current = newOwnFind();
  const own = kept ?? fresh.current;
  return <Form key={own.id} own={own} isNew={kept === undefined} known={known} goal={hourlyGoal} />;
}
