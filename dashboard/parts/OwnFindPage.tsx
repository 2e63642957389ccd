import type { FunctionComponent } from "preact";
import { useRef } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { newOwnFind, type OwnFind } from "../finds/own.ts";
import { finds, ownFinds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import { inventedFind, NO_SUCH_FIND_YOURS, TO_ITS_PAGE } from "../words/noFindOfYours.ts";
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
  /** Offers a copy of an invented find, opened here; where it is left out, the find's own page offers it. */
  readonly copy?: FunctionComponent<{ find: Find; page: "describe" | "spot" }>;
}

/** The find of one's own that the address names, or a new one, in a form. */
export function OwnFindPage({ page, title, begin, form: Form, copy: Copy }: OwnFindPageProps) {
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
    const invented = finds.value.find((find) => find.id === id);
    return (
      <main class="page" id="main">
        <Heading title={invented?.name ?? NO_SUCH_FIND_TITLE}>
          {invented === undefined ? NO_SUCH_FIND_YOURS : inventedFind(invented.name)}
        </Heading>
        <p class="acts">
          {invented !== undefined && Copy !== undefined && <Copy find={invented} page={page} />}
          <a class="btn quiet" href={invented === undefined ? `/${page}` : `/finds/${invented.id}`}>
            {invented === undefined ? begin : TO_ITS_PAGE}
          </a>
        </p>
      </main>
    );
  }
  // A new find gets its id before its first answer, so that the form stays the same when it gets its address.
  if (kept === undefined && ownFinds.get(fresh.current.id) !== undefined) fresh.current = newOwnFind();
  const own = kept ?? fresh.current;
  return <Form key={own.id} own={own} isNew={kept === undefined} known={known} goal={hourlyGoal} />;
}
