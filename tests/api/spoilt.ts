import fc from "fast-check";

/** What can be done to one place of a document. */
type Spoiling =
  | { readonly kind: "replace"; readonly by: unknown }
  | { readonly kind: "remove" }
  | { readonly kind: "rename" }
  | { readonly kind: "add"; readonly key: string; readonly value: unknown };

const odd = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom(
    -1,
    0,
    1e308,
    -1e308,
    1e-320,
    1.5,
    "",
    " ",
    "NaN",
    null,
    true,
    [],
    {},
    [[]],
    "\u0000",
    "\ud800",
  ),
);
const oddKey = fc.constantFrom(
  "__proto__",
  "constructor",
  "toString",
  "",
  "a/b~c",
  "levle",
  "hasOwnProperty",
  "0",
);

const spoiling: fc.Arbitrary<Spoiling> = fc.oneof(
  fc.record({ kind: fc.constant("replace" as const), by: odd }),
  fc.constant({ kind: "remove" as const }),
  fc.constant({ kind: "rename" as const }),
  fc.record({ kind: fc.constant("add" as const), key: oddKey, value: odd }),
);

/** Any document of an arbitrary with one to three of its places spoilt. */
export function spoilt(documents: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const places = fc.array(fc.tuple(fc.nat(), spoiling), { minLength: 1, maxLength: 3 });
  return fc.tuple(documents, places).map(([document, changes]) => {
    const root = { body: structuredClone(document) };
    // Copied, since a change may be drawn twice, and a value put into itself would have no end.
    for (const [at, change] of structuredClone(changes)) spoil(root, at, change);
    return root.body;
  });
}

function spoil(root: object, at: number, change: Spoiling): void {
  const all = placesIn(root);
  const [holder, key] = all[at % all.length] ?? [root as Holder, "body"];
  const value = holder[key];
  if (change.kind === "replace") holder[key] = change.by;
  if (change.kind === "remove") delete holder[key];
  if (change.kind === "rename") {
    delete holder[key];
    holder[`${key}s`] = value;
  }
  if (change.kind === "add" && isHolder(value)) {
    Object.defineProperty(value, change.key, {
      value: change.value,
      enumerable: true,
      configurable: true,
      writable: true,
    });
  }
}

type Holder = Record<string, unknown>;

function isHolder(value: unknown): value is Holder {
  return typeof value === "object" && value !== null;
}

/** Every place in a document: what holds it and under which name. */
function placesIn(holder: object): [Holder, string][] {
  return Object.entries(holder).flatMap(([key, value]) => {
    const here: [Holder, string] = [holder as Holder, key];
    return [here, ...(isHolder(value) ? placesIn(value) : [])];
  });
}
