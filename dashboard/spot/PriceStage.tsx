import { useState } from "preact/hooks";
import { NumberField } from "../parts/NumberField.tsx";
import { describedKind } from "../words/description.ts";
import { currencySign } from "../words/money.ts";
import { SPOT_TITLE } from "../words/spot.ts";
import {
  NO_LESS_THAN_NOTHING,
  SPOT_START_FOR_NOTHING,
  SPOT_START_GO_ON,
  SPOT_START_KEEP,
  SPOT_START_NO_PRICE,
  SPOT_START_NOT_KNOWN,
  SPOT_START_PRICE,
  SPOT_START_REST_UNKNOWN,
  SPOT_START_WHAT_ASKED,
} from "../words/spotStart.ts";
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
      <SpotHead title={SPOT_TITLE} heading={SPOT_START_WHAT_ASKED} focus={acted}>
        <p class="small">{SPOT_START_REST_UNKNOWN}</p>
      </SpotHead>
      {trail.length > 0 && (
        <UndoLine onUndo={onUndo}>{describedKind(own.answers.attributes, known)}</UndoLine>
      )}
      <form
        class="panel"
        onSubmit={(event) => {
          event.preventDefault();
          if (price === undefined) setWrong(SPOT_START_NO_PRICE);
          else if (price < 0) setWrong(NO_LESS_THAN_NOTHING);
          else take(price);
        }}
      >
        <NumberField
          label={SPOT_START_PRICE}
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
            {SPOT_START_GO_ON}
          </button>
          <button type="button" class="press cant" onClick={() => take(0)}>
            <b>{SPOT_START_FOR_NOTHING}</b>
          </button>
          <button type="button" class="press cant" onClick={() => take(undefined)}>
            <b>{SPOT_START_NOT_KNOWN}</b>
          </button>
        </div>
      </form>
      {before !== undefined && (
        <p class="acts spotacts">
          <button type="button" class="btn quiet" onClick={() => onReopen(null)}>
            {SPOT_START_KEEP}
          </button>
        </p>
      )}
    </main>
  );
}
