import { useId, useMemo, useRef, useState } from "preact/hooks";
import type { Appraisal, AppraisalBody, Reference } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { Picks } from "../parts/Picks.tsx";
import { printSheets } from "../sheets/printSheets.tsx";
import { Warning } from "../signs/Warning.tsx";
import {
  DRAFT_ANEW,
  DRAFT_ASK,
  DRAFT_BEFORE,
  DRAFT_CHANGED,
  DRAFT_COPY,
  DRAFT_PHOTOS,
  DRAFT_PRICE,
  DRAFT_PRICE_HINT,
  DRAFT_PRICE_WRONG,
  DRAFT_PRINT,
  DRAFT_SOLD_IN,
  DRAFT_STATES,
  DRAFT_TEXT,
  middleHalf,
} from "../words/listingDraft.ts";
import { currencySign, money, roundMoney } from "../words/money.ts";
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
          legend={DRAFT_SOLD_IN}
          choices={offered.map((value) => ({ value, ...DRAFT_STATES[value] }))}
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
        label={DRAFT_PRICE}
        value={price}
        onValue={setPrice}
        before={currencySign(answer.currency)}
        hint={DRAFT_PRICE_HINT}
        messages={price !== undefined && price < 0 ? [DRAFT_PRICE_WRONG] : []}
      />
      {props.suggested !== undefined && (
        <Suggested prices={props.suggested} currency={answer.currency} onPick={setPrice} />
      )}
      {refusal}
      {draft.kind === "draft" && (
        <>
          <div class="field">
            <label for={id}>{DRAFT_TEXT}</label>
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
              {DRAFT_CHANGED}{" "}
              <button type="button" class="plainbtn" onClick={() => edit(undefined)}>
                {DRAFT_ANEW}
              </button>
            </p>
          )}
          <div class="acts">
            <button type="button" class="btn" onClick={() => void copy()}>
              {DRAFT_COPY}
            </button>
            <button
              type="button"
              class="btn quiet"
              onClick={() => printSheets(<Sheets draft={draft} text={text} say={sayIn(catalogue)} />)}
            >
              {DRAFT_PRINT}
            </button>
          </div>
          <p class="copied" role="status">
            {told}
          </p>
          <Lines title={DRAFT_BEFORE} lines={draft.notes} />
          <Lines title={DRAFT_PHOTOS} lines={draft.photos} />
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
      <legend class="small">{middleHalf(prices, props.currency)}</legend>
      <div class="acts">
        {prices.map((price) => (
          <button key={price} type="button" class="btn quiet" onClick={() => props.onPick(price)}>
            <span class="sr">{DRAFT_ASK} </span>
            {money(price, props.currency)}
          </button>
        ))}
      </div>
    </fieldset>
  );
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
