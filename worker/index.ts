import { version } from "../package.json";
import { createApp } from "./api/app.ts";
import { readCatalogue } from "./tables.ts";

export default createApp({ version, readCatalogue });
