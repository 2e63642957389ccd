/**
 * A room: a folder or file whose imports are agreed. What a room imports says what it can know,
 * so a rule that is broken is a decision about the design, to be taken and written down here.
 */
export interface Room {
  /** Its name, also the path it starts with. */
  name: string;
  /** Path prefixes that belong to it; the longest match over all rooms wins. */
  paths: readonly string[];
  /** Rooms it may import, values and types; "*" is every room. Files of the same room always may. */
  rooms: readonly string[];
  /** Rooms it may import types from. */
  types: readonly string[];
  /** Packages and built-in modules it may import; "/*" takes what lies under it. */
  packages: readonly string[];
  /** Why, for whoever breaks the rule. */
  why: string;
}

const BASE = ["worker/engine/quantity", "worker/engine/domainError"];
const BICYCLE = "worker/engine/bicycle";
const STATISTICS = "worker/engine/statistics";
const OPTIMIZATION = "worker/engine/optimization";
const INSPECTION = "worker/engine/inspection";
const SERVICE = "worker/engine/service";
const VALUATION = "worker/engine/valuation";
const DECISION = "worker/engine/decision";
const DEMAND = "worker/engine/selling/demand";
const FOR_DECISION = [...BASE, BICYCLE, STATISTICS, OPTIMIZATION, INSPECTION, SERVICE, VALUATION, DEMAND];
const FOR_LAST = [...FOR_DECISION, DECISION];
const ENGINE = [
  ...FOR_LAST,
  "worker/engine/portfolio",
  "worker/engine/selling",
  "worker/engine/learning",
  "worker/engine",
];

function engineRoom(name: string, rooms: readonly string[], why: string): Room {
  return { name, paths: [`${name}.ts`, `${name}/`], rooms, types: [], packages: [], why };
}

export const ROOMS: readonly Room[] = [
  ...BASE.map((name) =>
    engineRoom(name, [], "units and errors are the ground every room stands on: they know nothing"),
  ),
  engineRoom(
    STATISTICS,
    BASE,
    "mathematics knows nothing of bicycles, so that it can be checked against published answers",
  ),
  engineRoom(
    OPTIMIZATION,
    BASE,
    "mathematics knows nothing of bicycles, so that it can be checked against published answers",
  ),
  engineRoom(BICYCLE, BASE, "the description of a bicycle is words alone, shared by every room of the trade"),
  engineRoom(
    INSPECTION,
    [...BASE, BICYCLE, STATISTICS],
    "what is seen on a bicycle does not depend on what it costs or sells for",
  ),
  engineRoom(
    SERVICE,
    [...BASE, BICYCLE, STATISTICS, OPTIMIZATION, INSPECTION],
    "the work follows from the findings, never from what the bicycle would sell for",
  ),
  engineRoom(
    VALUATION,
    [...BASE, BICYCLE, STATISTICS],
    "a value knows the description alone: condition reaches it as a field, never as findings or work",
  ),
  engineRoom(
    DEMAND,
    [...BASE, BICYCLE, STATISTICS, VALUATION],
    "days to sell follow from value and market; decisions build on them",
  ),
  engineRoom(
    DECISION,
    FOR_DECISION,
    "a decision joins findings, work and value; lists of finds, selling and learning build on it",
  ),
  engineRoom("worker/engine/portfolio", FOR_LAST, "comparing finds builds on single decisions"),
  engineRoom("worker/engine/selling", FOR_LAST, "selling builds on the decision made"),
  engineRoom("worker/engine/learning", FOR_LAST, "learning builds on what was decided and what came of it"),
  {
    name: "worker/engine",
    paths: ["worker/engine/catalogue", "worker/engine/appraisal"],
    rooms: ENGINE,
    types: [],
    packages: [],
    why: "the files that join the engine's rooms know the engine alone: tables and options reach them as arguments",
  },
  {
    name: "worker/tables",
    paths: ["worker/tables.ts", "worker/tables/"],
    rooms: ["data", ...BASE, BICYCLE],
    types: ENGINE,
    packages: ["zod"],
    why: "it is the sole reader of data/, and hands the engine its own types; it computes nothing",
  },
  {
    name: "worker/log",
    paths: ["worker/log/"],
    rooms: [],
    types: ENGINE,
    packages: ["cloudflare:workers"],
    why: "the record keeps rows and hands out the engine's types; it computes nothing",
  },
  {
    name: "worker/api",
    paths: ["worker/api/"],
    rooms: ENGINE,
    types: ["worker/tables", "worker/log"],
    packages: ["zod", "zod/v4/core", "hono", "hono/*"],
    why: "a route parses, calls the engine and answers; tables and log are given to it",
  },
  {
    name: "worker/index",
    paths: ["worker/index.ts"],
    rooms: ["worker/api", "worker/tables", "worker/log", "package.json"],
    types: [],
    packages: [],
    why: "the entry joins the app with its tables and its log, and does nothing else",
  },
  {
    name: "package.json",
    paths: ["package.json"],
    rooms: [],
    types: [],
    packages: [],
    why: "it holds the version of the service and imports nothing",
  },
  {
    name: "dashboard/local",
    paths: ["dashboard/local/"],
    rooms: ["worker/api", "package.json"],
    types: ENGINE,
    packages: ["zod", "virtual:catalogue"],
    why: "the one door through which the dashboard reaches the engine: the same API in the browser, from the same tables",
  },
  {
    name: "dashboard/serviceWorker",
    paths: ["dashboard/serviceWorker/"],
    rooms: [],
    types: [],
    packages: ["workbox-precaching", "workbox-routing"],
    why: "it keeps the files of the pages and knows nothing of what is in them",
  },
  {
    name: "dashboard/finds/demo",
    paths: ["dashboard/finds/demo.ts"],
    rooms: ["data"],
    types: ["dashboard"],
    packages: [],
    why: "the one door through which the invented finds reach the dashboard; the API appraises them like any other",
  },
  {
    name: "dashboard/prerender",
    paths: ["dashboard/prerender/"],
    rooms: ["dashboard", "dashboard/local", "dashboard/finds/demo", "worker/tables", "package.json"],
    types: [],
    packages: ["preact-render-to-string", "node:worker_threads"],
    why: "it draws the pages while they are built, with the answers of the engine, and runs in no browser",
  },
  {
    name: "dashboard",
    paths: ["dashboard/"],
    rooms: ["dashboard/local", "dashboard/serviceWorker", "dashboard/finds/demo"],
    types: ["worker/api"],
    packages: [
      "preact",
      "preact/*",
      "@preact/signals",
      "chart.js",
      "papaparse",
      "hono/client",
      "@fontsource-variable/*",
    ],
    why: "the dashboard shows what the API answers: what it may know is the API's types",
  },
  {
    name: "dashboard/build",
    paths: ["dashboard/vite.config.ts", "dashboard/build/"],
    rooms: ["worker/tables"],
    types: ["dashboard/serviceWorker", "dashboard/prerender"],
    packages: ["node:*", "vite", "@preact/preset-vite"],
    why: "the build knows its tools, the tables it writes down for the browser, and the list it hands the service worker",
  },
  {
    name: "data",
    paths: ["data/"],
    rooms: [...ENGINE, "worker/tables"],
    types: [],
    packages: ["node:*"],
    why: "scripts that make or calibrate tables may use the engine; nothing else of the project",
  },
  {
    name: "tests",
    paths: ["tests/"],
    rooms: ["*"],
    types: [],
    packages: ["*"],
    why: "tests may look at everything",
  },
];

/** The room a file belongs to: the one with the longest path that matches; none where no rule was agreed. */
export function roomOf(file: string): Room | undefined {
  const matches = ROOMS.flatMap((room) =>
    room.paths.filter((path) => belongs(file, path)).map((path) => ({ room, path })),
  );
  return matches.sort((a, b) => b.path.length - a.path.length)[0]?.room;
}

/** A path that ends in "/" is a folder, in an extension a file; any other stands for the file and the folder of that name. */
function belongs(file: string, path: string): boolean {
  if (path.endsWith("/")) return file.startsWith(path);
  return file === path || file.startsWith(`${path}/`) || file.startsWith(`${path}.`);
}
