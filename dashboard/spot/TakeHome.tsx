import { useId, useState } from "preact/hooks";
import { withAnswer } from "../answers/answers.ts";
import { LONGEST_NAME, type OwnFind } from "../finds/own.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { ownFinds } from "../state/finds.ts";
import { go } from "../state/route.ts";
import { currencySign } from "../words/money.ts";
import { END_NAME, END_PAID, END_TAKE_HOME, END_WRITE_PAID } from "../words/spotEnd.ts";

interface TakeHomeProps {
  readonly own: OwnFind;
  readonly currency: string;
  /** A price the user tried. */
  readonly offer: number | undefined;
}

/** Taken home: what was paid no longer decides, and the find gets a name to be known by. */
export function TakeHome({ own, currency, offer }: TakeHomeProps) {
  const id = useId();
  const [price, setPrice] = useState(offer ?? own.answers.price);
  const [name, setName] = useState(own.name);
  const [wrong, setWrong] = useState("");
  const take = () => {
    if (price === undefined || price < 0) {
      setWrong(END_WRITE_PAID);
      return;
    }
    const answers = withAnswer(withAnswer(own.answers, "price", price), "paid", true);
    ownFinds.put({ ...own, name, answers });
    go(`/finds/${encodeURIComponent(own.id)}`);
  };
  return (
    <form
      class="ending"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <NumberField
        label={END_PAID}
        value={price}
        onValue={(value) => {
          setPrice(value);
          setWrong("");
        }}
        before={currencySign(currency)}
        messages={wrong === "" ? [] : [wrong]}
      />
      <div class="field">
        <label for={id}>{END_NAME}</label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          maxLength={LONGEST_NAME}
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      <button type="submit" class="btn">
        {END_TAKE_HOME}
      </button>
    </form>
  );
}
