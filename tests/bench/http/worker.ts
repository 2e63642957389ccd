import { version } from "../../../package.json";
import { createApp } from "../../../worker/api/app.ts";
import { jsonBody } from "../../../worker/api/jsonBody.ts";
import { serviceOf } from "../../../worker/api/service.ts";
import { readCatalogue } from "../../../worker/tables.ts";

const dependencies = { version, readCatalogue };

/** The API as deployed, with a route beside it that reads and checks the same body and sends it back: the yardstick. */
export default createApp(dependencies).post("/echo", jsonBody(serviceOf(dependencies).request), (c) =>
  c.json(c.req.valid("json")),
);
