import { useState } from "preact/hooks";
import { NumberField } from "../parts/NumberField.tsx";
import { describedKind } from "../words/description.ts";
import { currencySign } from "../words/money.ts";
import { SPOT_TITLE } from "../words/spot.ts";
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
      <SpotHead title={SPOT_TITLE} heading="What do they ask?" focus={acted}>
        <p class="small">All else counts as unknown, never as good.</p>
      </SpotHead>
      {trail.length > 0 && (
        <UndoLine onUndo={onUndo}>{describedKind(own.answers.attributes, known)}</UndoLine>
      )}
      <form
        class="panel"
        onSubmit={(event) => {
          event.preventDefault();
          if (price === undefined) setWrong("Write a price, or take one of the two below.");
          else if (price < 0) setWrong("A price is nothing or more.");
          else take(price);
        }}
      >
        <NumberField
          label="Asking price"
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
            Go on
          </button>
          <button type="button" class="press cant" onClick={() => take(0)}>
            <b>For nothing</b>
          </button>
          <button type="button" class="press cant" onClick={() => take(undefined)}>
            <b>Not known yet</b>
          </button>
        </div>
      </form>
      {before !== undefined && (
        <p class="acts spotacts">
          <button type="button" class="btn quiet" onClick={() => onReopen(null)}>
            Keep it as it is
          </button>
        </p>
      )}
    </main>
  );
}
