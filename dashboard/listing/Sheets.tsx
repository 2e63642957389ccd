import { Blank } from "../sheets/Blank.tsx";
import type { Say, SentenceKey } from "./catalogue.ts";
import type { Draft, SectionId } from "./draft.ts";

/** The draft on paper: the advert with its list of pictures, the bill of sale, the sheet of work and limits. */
export function Sheets({ draft, text, say }: { draft: Draft; text: string; say: Say }) {
  return (
    <>
      <section>
        <h1>{say("sheetListing")}</h1>
        <p class="prose">{text}</p>
        <h2>{say("sheetPhotos")}</h2>
        <ul class="boxes">
          {draft.photos.map((photo) => (
            <li key={photo}>{photo}</li>
          ))}
        </ul>
      </section>
      <BillOfSale draft={draft} say={say} />
      <section>
        <h1>{say("sheetWork")}</h1>
        <p>
          <b>{draft.title}</b>
        </p>
        {draft.opening.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <Sections draft={draft} ids={["done", "notDone", "faults", "checks"]} />
        <Blank label={say("workBy")} />
      </section>
    </>
  );
}

/** Fields of a bill of sale: customary, no source; local law comes first. */
function BillOfSale({ draft, say }: { draft: Draft; say: Say }) {
  const blank = (key: SentenceKey, filled?: string | null) => <Blank label={say(key)} filled={filled} />;
  return (
    <section>
      <h1>{say("sheetBill")}</h1>
      {blank("billDate")}
      {blank("billSeller")}
      {blank("billBuyer")}
      {blank("billWhat", draft.title)}
      {blank("billFrameNumber")}
      {blank("billPrice", draft.price)}
      <p>
        <b>{say("billSold")}</b>
      </p>
      {draft.opening.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Sections draft={draft} ids={["what", "faults"]} />
      {blank("billQuery")}
      {blank("billReceipts")}
      <p>{say("billSheet")}</p>
      <div class="signatures">
        {blank("billSellerSigns")}
        {blank("billBuyerSigns")}
      </div>
    </section>
  );
}

function Sections({ draft, ids }: { draft: Draft; ids: readonly SectionId[] }) {
  return draft.sections
    .filter(({ id }) => ids.includes(id))
    .map(({ id, heading, lines, items }) => (
      <div key={id}>
        <h2>{heading}</h2>
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <ul class={id}>
          {items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      </div>
    ));
}
