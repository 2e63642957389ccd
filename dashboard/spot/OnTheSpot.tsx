import { useRef, useState } from "preact/hooks";
import { type Answers, NEEDED } from "../answers/answers.ts";
import type { Reference } from "../api/types.ts";
import type { OwnFind } from "../finds/own.ts";
import type { OpenedProps } from "../parts/OwnFindPage.tsx";
import { askingOf } from "../state/finds.ts";
import { rename } from "../state/route.ts";
import { Looks } from "./Looks.tsx";
import { PickStage } from "./PickStage.tsx";
import { PriceStage } from "./PriceStage.tsx";
import { putOnTheSpot, trails } from "./state.ts";
import { isPriceAsked, lastOf, type Step, taken, undone } from "./trail.ts";

/** What every stage of the page is handed. */
export interface StageProps {
  readonly own: OwnFind;
  readonly known: Reference;
  readonly goal: number;
  readonly trail: readonly Step[];
  /** Takes a step: the find, its trail and the question follow. */
  readonly onStep: (step: Step) => void;
  /** Takes the last step back and returns it with the trail before it; null where there is none. */
  readonly onUndo: () => ReturnType<typeof lastOf>;
  /** Opens a pick or the price again; null keeps it as it is. */
  readonly onReopen: (what: Reopened) => void;
  /** Something was pressed here: the next heading takes the focus. */
  readonly acted: boolean;
}

/** Which pick or price the user has opened again, though it was answered. */
export type Reopened = (typeof NEEDED)[number] | "price" | null;

/** One find beside the bike: what is not yet picked, then what they ask, then look after look. */
export function OnTheSpot({ own, isNew, known, goal }: OpenedProps) {
  const trail = trails.all.value[own.id] ?? [];
  const [reopened, setReopened] = useState<Reopened>(null);
  const acted = useRef(false);

  const keep = (answers: Answers, left: readonly Step[]) => {
    putOnTheSpot({ ...own, answers }, left);
    // The first answer makes the find, and gives the page its address.
    if (isNew) rename(`/spot/${encodeURIComponent(own.id)}`);
  };
  const onStep = (step: Step) => {
    setReopened(null);
    acted.current = true;
    keep(taken(own.answers, step), [...trail, step]);
  };
  const onUndo = () => {
    setReopened(null);
    acted.current = true;
    const last = lastOf(own.answers, trail);
    if (last === null) return null;
    keep(undone(own.answers, last.step), last.rest);
    return last;
  };
  const onReopen = (what: Reopened) => {
    acted.current = true;
    setReopened(what);
  };
  const stage = { own, known, goal, trail, onStep, onUndo, onReopen, acted: acted.current };
  const missing = NEEDED.find((name) => own.answers.attributes[name] === undefined);
  const pick = reopened === "price" ? undefined : (reopened ?? missing);
  if (pick !== undefined) return <PickStage key={pick} name={pick} isNew={isNew} {...stage} />;
  if (reopened === "price" || !isPriceKnown(own.answers, trail)) return <PriceStage {...stage} />;
  return <Looks {...stage} asking={askingOf(own.id)} />;
}

/** Whether the asking price was told, or asked for and not known, or no longer matters. */
function isPriceKnown(answers: Answers, trail: readonly Step[]): boolean {
  return answers.price !== undefined || answers.paid === true || isPriceAsked(trail);
}
