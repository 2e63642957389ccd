import { useId, useMemo, useRef, useState } from "preact/hooks";
import type { Appraisal, AppraisalBody, Reference } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { Picks } from "../parts/Picks.tsx";
import { printSheets } from "../sheets/printSheets.tsx";
import { Warning } from "../signs/Warning.tsx";
import { currencySign, money, roundMoney } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import { ENGLISH, type ListingCatalogue, sayIn } from "./catalogue.ts";
import { copyText } from "./copyText.ts";
import { draftText } from "./draft.ts";
import { Jobs } from "./Jobs.tsx";
import "./listing.css";
import { listingDraft } from "./listingDraft.ts";
import { Sheets } from "./Sheets.tsx";
import { defaultState, offeredStates, type SaleState } from "./saleStates.ts";

export interface ListingDraftProps {
  /** The answer of POST /v1/appraisals, and the question it answers. */
  readonly answer: Appraisal;
  readonly body: AppraisalBody;
  readonly reference: Reference;
  /** The state picked at first; else the decided course's. */
  readonly state?: SaleState;
  /** The page picks the state, in place of the draft. */
  readonly stateFixed?: boolean;
  /** Prices to choose the asking price from, low to high, in the answer's currency. */
  readonly suggested?: readonly number[];
  /** In the answer's currency; stands until another is typed. */
  readonly askingPrice?: number;
  /** Labels an invented find. */
  readonly invented?: boolean;
  readonly catalogue?: ListingCatalogue;
}

const STATES: Readonly<Record<SaleState, { readonly label: string; readonly detail: string }>> = {
  asFound: { label: "As found", detail: "no repair made" },
  madeSafe: { label: "Made safe", detail: "the work of that plan is done" },
  restored: { label: "Restored", detail: "the work of that plan is done" },
  parts: { label: "As parts", detail: "piece by piece" },
};

const NOTHING_UNDONE: ReadonlySet<string> = new Set();

/** An advert to edit, copy and print: every fault that remains and every check not made stands in it. */
export function ListingDraft(props: ListingDraftProps) {
  const { answer, body, reference, invented, catalogue = ENGLISH } = props;
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  const [chosen, setChosen] = useState(props.state);
  const picked = props.stateFixed === true ? props.state : chosen;
  const [undone, setUndone] = useState(NOTHING_UNDONE);
  // The page's price is followed until another is typed.
  const [typed, setTyped] = useState<{ readonly price: number | undefined } | null>(null);
  const price = typed === null ? props.askingPrice : typed.price;
  const setPrice = (next: number | undefined) => setTyped({ price: next });
  const [edits, setEdits] = useState<Partial<Record<SaleState, string>>>({});
  const [told, setTold] = useState("");
  const offered = offeredStates(answer);
  const state = picked !== undefined && offered.includes(picked) ? picked : defaultState(answer);
  const draft = useMemo(
    () =>
      listingDraft({
        answer,
        body,
        reference,
        state: state ?? undefined,
        undone,
        askingPrice: price,
        invented,
        catalogue,
      }),
    [answer, body, reference, state, undone, price, invented, catalogue],
  );

  const refusal = draft.kind === "refused" && (
    <Warning kind="stop">
      <b>{draft.why}</b>
    </Warning>
  );
  if (state === null) return <div class="listing">{refusal}</div>;

  const text = draft.kind === "draft" ? (edits[state] ?? draftText(draft)) : "";
  const edit = (typed: string | undefined) => setEdits({ ...edits, [state]: typed });
  const copy = async () => setTold(await copyText(text, area.current));
  return (
    <div class="listing">
      {props.stateFixed !== true && (
        <Picks
          legend="Sold in which state?"
          choices={offered.map((value) => ({ value, ...STATES[value] }))}
          value={state}
          onValue={(value) => {
            setChosen(value as SaleState);
            setTold("");
          }}
          layout="grid"
        />
      )}
      <Jobs answer={answer} state={state} undone={undone} onUndone={setUndone} say={sayIn(catalogue)} />
      <NumberField
        label="Asking price"
        value={price}
        onValue={setPrice}
        before={currencySign(answer.currency)}
        hint="Left empty, the text keeps a blank to fill."
        messages={price !== undefined && price < 0 ? ["Ask nothing or more."] : []}
      />
      {props.suggested !== undefined && (
        <Suggested prices={props.suggested} currency={answer.currency} onPick={setPrice} />
      )}
      {refusal}
      {draft.kind === "draft" && (
        <>
          <div class="field">
            <label for={id}>Text of the advert, yours to change</label>
            <textarea
              id={id}
              ref={area}
              rows={18}
              value={text}
              onInput={(event) => edit(event.currentTarget.value)}
            />
          </div>
          {edits[state] !== undefined && (
            <p class="note">
              You changed this text: it no longer follows the state, the jobs and the price picked above.{" "}
              <button type="button" class="plainbtn" onClick={() => edit(undefined)}>
                Write it anew
              </button>
            </p>
          )}
          <div class="acts">
            <button type="button" class="btn" onClick={() => void copy()}>
              Copy the text
            </button>
            <button
              type="button"
              class="btn quiet"
              onClick={() => printSheets(<Sheets draft={draft} text={text} say={sayIn(catalogue)} />)}
            >
              Print the sheets
            </button>
          </div>
          <p class="copied" role="status">
            {told}
          </p>
          <Lines title="Before you publish" lines={draft.notes} />
          <Lines title="Photographs to take" lines={draft.photos} />
        </>
      )}
    </div>
  );
}

/** Prices to take over with one press; they are estimates, and none is filled in unasked. */
function Suggested(props: { prices: readonly number[]; currency: string; onPick: (price: number) => void }) {
  const prices = [...new Set(props.prices.map(roundMoney))];
  return (
    <fieldset class="suggested">
      <legend class="small">
        The middle half of what it fetches, before haggling: {moneyWords(prices, props.currency)}. Ask:
      </legend>
      <div class="acts">
        {prices.map((price) => (
          <button key={price} type="button" class="btn quiet" onClick={() => props.onPick(price)}>
            <span class="sr">Ask </span>
            {money(price, props.currency)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

function moneyWords(prices: readonly number[], currency: string): string {
  return moneyRange(prices[0] ?? 0, prices.at(-1) ?? 0, currency);
}

function Lines({ title, lines }: { title: string; lines: readonly string[] }) {
  return (
    <>
      <h3>{title}</h3>
      <ul class="bullets">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
