import type { ReadonlySignal } from "@preact/signals";
import { whereWorkedOut } from "../words/whereWorkedOut.ts";
import { thisDevice } from "./thisDevice.ts";

interface Answering {
  readonly answer: ReadonlySignal<unknown>;
  readonly here: ReadonlySignal<boolean>;
}

/** Says at the foot of a page where its answers were worked out. */
export function WorkedOut({ askings }: { askings: readonly Answering[] }) {
  const here = askings.filter(({ answer }) => answer.value !== null).map((asking) => asking.here.value);
  return <p class="page workedout">{whereWorkedOut(here, thisDevice())}</p>;
}
