import "./style/fonts.css";
import "./style/tokens.css";
import "./style/ground.css";
import "./style/chart.css";
import "./style/find.css";
import "./style/form.css";
import "./style/prices.css";
import "./style/term.css";
import "./style/status.css";
import { takeOver } from "./firstSight/takeOver.tsx";
import { ownTask } from "./parts/ownTask.ts";
import { keepAsking } from "./state/finds.ts";
import { loadReference } from "./state/reference.ts";
import { followAddress } from "./state/route.ts";
import { followHands } from "./state/settling.ts";
import { writeFor } from "./words/locale.ts";

const place = document.getElementById("app");
if (place === null) throw new Error("index.html must hold an element with the id app");
followAddress();
followHands();
void loadReference();
addEventListener("online", () => void loadReference());
void begin(place);

async function begin(app: Element): Promise<void> {
  // In tasks of their own, between which the page answers.
  await ownTask();
  writeFor(navigator.languages);
  await ownTask();
  keepAsking();
  await takeOver(app, document.getElementById("first"));
  const { beginOffline } = await import("./offline/begin.ts");
  await beginOffline();
}
