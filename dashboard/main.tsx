import "./style/fonts.css";
import "./style/tokens.css";
import "./style/ground.css";
import "./style/chart.css";
import "./style/find.css";
import "./style/form.css";
import { render } from "preact";
import { App } from "./App.tsx";
import { keepAsking } from "./state/finds.ts";
import { loadReference } from "./state/reference.ts";
import { followAddress } from "./state/route.ts";

const place = document.getElementById("app");
if (place === null) throw new Error("index.html must hold an element with the id app");
followAddress();
keepAsking();
void loadReference();
addEventListener("online", () => void loadReference());
render(<App />, place);
