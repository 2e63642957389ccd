import { Heading } from "../parts/Heading.tsx";
import { WORKING } from "../words/common.ts";
import { NO_SUCH_FIND_HERE, NO_SUCH_FIND_STAY } from "../words/noSuchFind.ts";
import { NO_SUCH_FIND_TITLE, PLACE_NAMES, TO_THE_FINDS } from "../words/placeNames.ts";

/** A page about a find before its catalogue or its answer has come. */
export function Waiting() {
  return (
    <main class="page" id="main">
      <Heading title={PLACE_NAMES.find}>{WORKING}</Heading>
    </main>
  );
}

/** A page about a find that is not in this browser. */
export function Unknown() {
  return (
    <main class="page" id="main">
      <Heading title={NO_SUCH_FIND_TITLE}>{NO_SUCH_FIND_HERE}</Heading>
      <p>
        {NO_SUCH_FIND_STAY} <a href="/">{TO_THE_FINDS}</a>
      </p>
    </main>
  );
}
