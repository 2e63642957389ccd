import { Heading } from "../parts/Heading.tsx";
import { WORKING } from "../words/common.ts";

/** A page about a find before its catalogue or its answer has come. */
export function Waiting() {
  return (
    <main class="page" id="main">
      <Heading title="A find">{WORKING}</Heading>
    </main>
  );
}

/** A page about a find that is not in this browser. */
export function Unknown() {
  return (
    <main class="page" id="main">
      <Heading title="No such find">There is no find here by that name.</Heading>
      <p>
        Your own finds stay in the browser in which they were described. <a href="/">To the finds</a>
      </p>
    </main>
  );
}
