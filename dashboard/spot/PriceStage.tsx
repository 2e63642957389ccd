import { useState } from "preact/hooks";
import { NumberField } from "../parts/NumberField.tsx";
import { describedKind } from "../words/description.ts";
import { currencySign } from "../words/money.ts";
import { SPOT_TITLE } from "../words/spot.ts";
import { NO_LESS_THAN_NOTHING, SPOT_START } from "../words/spotStart.ts";
import type { StageProps } from "./OnTheSpot.tsx";
import { SpotHead } from "./SpotHead.tsx";
import { UndoLine } from "./UndoLine.tsx";

/** What they ask: a figure, nothing, or not known. */
export function PriceStage(props: StageProps) {
  const { own, known, acted, onStep, onUndo, trail, onReopen } = props;
  const before = own.answers.price;
  const [price, setPrice] = useState(before);
  const [wrong, setWrong] = useState("");
  const take = (set: number | undefined) =>
    onStep({
      kind: "price",
      ...(before === undefined ? {} : { before }),
      ...(set === undefined ? {} : { set }),
    });
  return (
    <main class="page spot picking" id="main">
      <SpotHead title={SPOT_TITLE} heading={SPOT_START.whatAsked} focus={acted}>
        <p class="small">{SPOT_START.restUnknown}</p>
      </SpotHead>
      {trail.length > 0 && (
        <UndoLine onUndo={onUndo}>{describedKind(own.answers.attributes, known)}</UndoLine>
      )}
      <form
        class="panel"
        onSubmit={(event) => {
          event.preventDefault();
          if (price === undefined) setWrong(SPOT_START.noPrice);
          else if (price < 0) setWrong(NO_LESS_THAN_NOTHING);
          else take(price);
        }}
      >
        <NumberField
          label={SPOT_START.price}
          value={price}
          onValue={(value) => {
            setPrice(value);
            setWrong("");
          }}
          before={currencySign(known.currency)}
          messages={wrong === "" ? [] : [wrong]}
        />
        <div class="choices">
          <button type="submit" class="btn">
            {SPOT_START.goOn}
          </button>
          <button type="button" class="press cant" onClick={() => take(0)}>
            <b>{SPOT_START.forNothing}</b>
          </button>
          <button type="button" class="press cant" onClick={() => take(undefined)}>
            <b>{SPOT_START.notKnown}</b>
          </button>
        </div>
      </form>
      {before !== undefined && (
        <p class="acts spotacts">
          <button type="button" class="btn quiet" onClick={() => onReopen(null)}>
            {SPOT_START.keep}
          </button>
        </p>
      )}
    </main>
  );
}
