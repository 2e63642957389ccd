import type { ReadonlySignal } from "@preact/signals";
import { whereWorkedOut } from "../words/whereWorkedOut.ts";
import { thisDevice } from "./thisDevice.ts";

interface Answering {
  readonly answer: ReadonlySignal<unknown>;
  readonly fault: ReadonlySignal<unknown>;
  readonly here: ReadonlySignal<boolean>;
}

/** Says at the foot of a page where its answers were worked out, once all have come that will. */
export function WorkedOut({ askings }: { askings: readonly Answering[] }) {
  if (askings.some(({ answer, fault }) => answer.value === null && fault.value === null)) return null;
  const here = askings.filter(({ answer }) => answer.value !== null).map((asking) => asking.here.value);
  if (here.length === 0) return null;
  return <footer class="page workedout">{whereWorkedOut(here, thisDevice())}</footer>;
}
