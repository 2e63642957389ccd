import { isComplete, NEEDED, NO_ANSWERS } from "../answers/answers.ts";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { AttributeName, Reference } from "../api/types.ts";
import { Picks } from "../parts/Picks.tsx";
import { moved } from "../state/route.ts";
import { sellingTerms } from "../state/selling.ts";
import { FIELD_NAMES } from "../words/fields.ts";
import { SELLING_PAGE_WHAT_IS_IT } from "../words/sellingPage.ts";
import type { AloneAnswers } from "./terms.ts";

/** What must be known of a bicycle that is none of the finds. */
export function AlonePicks(props: { alone: AloneAnswers; known: Reference; fault: Fault | null }) {
  const { alone, known, fault } = props;
  const put = (name: AttributeName, value: string | undefined) => {
    const wanting = !isComplete({ ...NO_ANSWERS, attributes: alone });
    sellingTerms.putAlone(name, value);
    // The last of the four turns the page: its heading takes the focus, as after a move.
    if (wanting && isComplete({ ...NO_ANSWERS, attributes: { ...alone, [name]: value } })) moved.value = true;
  };
  return (
    <section class="panel" aria-labelledby="alone-title">
      <h2 id="alone-title">{SELLING_PAGE_WHAT_IS_IT}</h2>
      {NEEDED.map((name) => (
        <Picks
          key={name}
          legend={FIELD_NAMES[name]}
          choices={known.attributes[name]}
          value={alone[name]}
          onValue={(value) => put(name, value)}
          messages={messagesAt(fault, `/find/${name}`)}
          layout="grid"
        />
      ))}
    </section>
  );
}
