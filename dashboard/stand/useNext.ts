import { useEffect, useState } from "preact/hooks";
import { messagesAt } from "../api/fault.ts";
import type { Check } from "../api/types.ts";
import { pointerTo } from "../describe/CheckAnswer.tsx";
import type { OpenLook } from "./looks.ts";
import { type NextPick, nextPick } from "./nextPick.ts";
import type { Bench } from "./useBench.ts";

/** The card shown first, and how it gives way to the next. */
export interface Next {
  /** The check on the card; null where there is none to make. */
  readonly shown: Check | null;
  readonly pick: NextPick;
  /** Answered, and waiting for the answer that says what is next. */
  readonly isLeaving: boolean;
  /** Whether a card was answered before this one, so that its heading takes the focus. */
  readonly isMoved: boolean;
  leave(): void;
  putOff(): void;
  goOn(): void;
  /** Puts a check on the card, as undoing its answer does. */
  show(check: string): void;
}

/**
 * Keeps one check on the card until it is done with: the order never changes under the user's hands. The next one is chosen
 * once the answer to the last one has come.
 */
export function useNext(
  bench: Bench,
  checks: readonly Check[],
  looks: readonly OpenLook[],
  together: ReadonlySet<string>,
): Next {
  const [pinned, setPinned] = useState<string | null>(null);
  const [isLeaving, setLeaving] = useState(true);
  const [isMoved, setMoved] = useState(false);
  const [later, setLater] = useState<readonly string[]>([]);
  const [goingOn, setGoingOn] = useState(false);
  const pick = nextPick(looks, together, { unsure: bench.unsure, later, goingOn });
  const shown = checks.find(({ id }) => id === pinned) ?? null;
  const { status, fault, appraisal } = bench;
  const refused = shown !== null && messagesAt(fault, pointerTo(shown)).length > 0;
  const next = pick.next?.check.id ?? null;
  // A card that the description no longer calls for gives way too.
  const isDue = isLeaving || (pinned !== null && shown === null);

  useEffect(() => {
    if (!isDue || status !== "settled" || (appraisal === null && fault === null)) return;
    setLeaving(false);
    if (!refused) setPinned(next);
  }, [isDue, status, appraisal, fault, refused, next]);

  const leave = () => {
    setMoved(true);
    setLeaving(true);
  };
  return {
    shown,
    pick,
    isLeaving,
    isMoved,
    leave,
    putOff() {
      if (pinned !== null) setLater([...later.filter((one) => one !== pinned), pinned]);
      leave();
    },
    goOn() {
      setGoingOn(true);
      leave();
    },
    show(check) {
      setMoved(true);
      setLeaving(false);
      setPinned(check);
    },
  };
}
