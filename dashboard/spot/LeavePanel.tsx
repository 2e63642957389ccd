import type { OwnFind } from "../finds/own.ts";
import { askingOf, ownFinds } from "../state/finds.ts";
import { go } from "../state/route.ts";

/** Left where it is: what was seen is kept, or not. */
export function LeavePanel({ own }: { own: OwnFind }) {
  const remove = () => {
    ownFinds.remove(own.id);
    askingOf(own.id).stop();
    go("/");
  };
  return (
    <div class="ending">
      <p>What you saw is kept among the finds; they may come down yet.</p>
      <p class="acts">
        <a class="btn" href="/">
          Leave and keep it
        </a>
        <a class="btn quiet" href="/spot">
          Look at another
        </a>
        <button type="button" class="btn quiet" onClick={remove}>
          Remove for good
        </button>
      </p>
    </div>
  );
}
