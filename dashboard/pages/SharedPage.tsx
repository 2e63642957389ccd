import { useEffect, useState } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { withGoal } from "../finds/find.ts";
import { Heading } from "../parts/Heading.tsx";
import { WorkedOut } from "../parts/WorkedOut.tsx";
import { type ReadLink, readFragment } from "../share/fragment.ts";
import { leftOut, notKnown } from "../share/leftOut.ts";
import { keptAlready, ownFrom, type SharedFind } from "../share/sharedFind.ts";
import { askable, askingOf, ownFinds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { go } from "../state/route.ts";
import { WORKING } from "../words/common.ts";
import { PLACE_NAMES, TO_THE_FINDS } from "../words/placeNames.ts";
import { leftOutWords, NOT_KEPT, tooLittle, WRONG_LINK } from "../words/share.ts";
import { SHARED_KEEP, SHARED_KEPT_ALREADY, SHARED_OPEN_YOURS, SHARED_WITH_YOU } from "../words/sharedPage.ts";
import { Known } from "./FindPage.tsx";
import { Waiting } from "./findStates.tsx";
import "../style/share.css";

/** A find that somebody sent as a link: what it is worth on the goal and the prices of whoever opens it. */
export function SharedPage() {
  const read = useFragment();
  const known = reference.value;
  const hourlyGoal = goal.value;
  if (read === null || known === null || hourlyGoal === null) return <Waiting />;
  if ("wrong" in read) return <Wrong wrong={read.wrong} />;
  const left = [
    ...leftOut(rawAnswers(read.raw), read.shared.answers),
    ...notKnown(read.shared.answers, known),
  ];
  return <Shared shared={read.shared} left={left} known={known} goal={hourlyGoal} />;
}

/** What the address holds; read anew when another link is opened on this page. Null while it is read. */
function useFragment(): ReadLink | null {
  const [fragment, setFragment] = useState(location.hash);
  const [read, setRead] = useState<ReadLink | null>(null);
  useEffect(() => {
    const follow = () => setFragment(location.hash);
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, []);
  useEffect(() => {
    let gone = false;
    void readFragment(fragment).then((found) => !gone && setRead(found));
    return () => {
      gone = true;
    };
  }, [fragment]);
  return read;
}

const rawAnswers = (raw: unknown) => (raw as { readonly answers: unknown }).answers;

interface SharedProps {
  readonly shared: SharedFind;
  /** What the link held and nothing is worked out from, by path. */
  readonly left: readonly string[];
  readonly known: Reference;
  readonly goal: number;
}

function Shared({ shared, left, known, goal: hourlyGoal }: SharedProps) {
  const own = ownFrom(shared);
  const kept = keptAlready(shared, ownFinds.all.value);
  const find = askable(own);
  const body = find === null ? null : withGoal(find.body, hourlyGoal);
  useEffect(() => {
    if (body !== null) askingOf(own.id).ask(body);
  }, [JSON.stringify(body)]);

  const keep = () => {
    ownFinds.put(own);
    go(`/finds/${encodeURIComponent(own.id)}`);
  };
  const little = tooLittle(shared.answers);
  const openAt =
    kept === undefined ? "" : `/${little === null ? "finds" : "describe"}/${encodeURIComponent(kept.id)}`;
  const actions = (
    <>
      {kept === undefined ? (
        <div class="acts">
          <button type="button" class="btn" onClick={keep}>
            {SHARED_KEEP}
          </button>
        </div>
      ) : (
        <p class="note">
          {SHARED_KEPT_ALREADY} <a href={openAt}>{SHARED_OPEN_YOURS}</a>
        </p>
      )}
      {left.length > 0 && <p class="note">{leftOutWords(left)}</p>}
    </>
  );
  if (find !== null) {
    return (
      <>
        <Known
          key={own.id}
          find={find}
          known={known}
          goal={hourlyGoal}
          visit={{ tag: kept === undefined ? NOT_KEPT : SHARED_WITH_YOU, actions }}
        />
        <WorkedOut askings={[askingOf(own.id)]} />
      </>
    );
  }
  return (
    <main class="page" id="main">
      <Heading title={PLACE_NAMES.shared}>{little ?? WORKING}</Heading>
      {actions}
    </main>
  );
}

function Wrong({ wrong }: { wrong: keyof typeof WRONG_LINK }) {
  const { title, text } = WRONG_LINK[wrong];
  return (
    <main class="page" id="main">
      <Heading title={PLACE_NAMES.shared}>{title}</Heading>
      <p>{text}</p>
      <p>
        <a href="/">{TO_THE_FINDS}</a>
      </p>
    </main>
  );
}
