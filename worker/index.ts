import { version } from "../package.json";
import { createApp } from "./api/app.ts";
import { readCatalogue } from "./tables.ts";

// Read and checked when the isolate starts, so that no request pays for it.
const catalogue = readCatalogue();

export default createApp({ version, readCatalogue: () => catalogue });
