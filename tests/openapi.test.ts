import { Validator } from "@seriousme/openapi-schema-validator";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { createApp } from "../worker/api/app.ts";
import { readCatalogue } from "../worker/tables.ts";

// In Node, since the validators compile schemas to code, which the Worker's runtime forbids.
const app = createApp({ version: "0.0.0", readCatalogue });

/** Where the document is taken to stand, for references into it. */
const HOME = "http://spokeworth.test/openapi.json";

interface Content {
  readonly schema: { readonly $ref?: string };
  readonly example?: unknown;
}
interface Operation {
  readonly requestBody?: { readonly content: Readonly<Record<string, Content>> };
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, Content>> }>>;
}
interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, object>> };
}

async function documentOf(): Promise<Document> {
  return (await app.request("/openapi.json")).json() as Promise<Document>;
}

function operations({ paths }: Document): [string, string, Operation][] {
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]): [string, string, Operation] => [
      method,
      path,
      operation,
    ]),
  );
}

/** Every media type of an operation's body and answers. */
function contents({ requestBody, responses }: Operation): Content[] {
  const answers = Object.values(responses).flatMap(({ content }) => Object.values(content ?? {}));
  return [...Object.values(requestBody?.content ?? {}), ...answers];
}

/** An independent reader of the document's schemas (JSON Schema draft 2020-12). */
function readerOf(document: Document): (schema: object, value: unknown) => string[] {
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  ajv.addSchema({ $id: HOME, components: document.components });
  return (schema, value) => {
    const text = JSON.stringify(schema).replaceAll('"#/', `"${HOME}#/`);
    const validate = ajv.compile(JSON.parse(text));
    validate(value);
    return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
  };
}

function reference(name: string): object {
  return { $ref: `#/components/schemas/${name}` };
}

async function post(path: string, body: unknown): Promise<{ status: number; json: unknown }> {
  const headers = { "Content-Type": "application/json" };
  const answer = await app.request(path, { method: "POST", headers, body: JSON.stringify(body) });
  return { status: answer.status, json: await answer.json() };
}

describe("GET /openapi.json", () => {
  test("is a valid OpenAPI 3.1 document whose references all lead somewhere", async () => {
    const document = await documentOf();
    expect(await new Validator().validate(structuredClone(document) as never)).toEqual({ valid: true });
  });

  test("the validator is no rubber stamp: a document with a fault is refused", async () => {
    const document = structuredClone(await documentOf());
    const [operation] = operations(document).map(([, , one]) => one);
    Object.assign(operation ?? {}, { responses: "none" });
    expect(await new Validator().validate(document as never)).toMatchObject({ valid: false });
  });

  test("lists every route of the app and no other", async () => {
    const listed = operations(await documentOf()).map(([method, path]) => `${method.toUpperCase()} ${path}`);
    const served = app.routes
      .filter(({ method }) => method !== "ALL")
      .map(({ method, path }) => `${method} ${path}`);
    expect(listed.toSorted()).toEqual([...new Set(served)].toSorted());
  });

  test("every example is as its schema asks, and every route with a body has one", async () => {
    const document = await documentOf();
    const faults = readerOf(document);
    for (const [method, path, operation] of operations(document)) {
      if (method === "post")
        expect(operation.requestBody?.content["application/json"]?.example, path).toBeDefined();
      for (const { schema, example } of contents(operation)) {
        if (example !== undefined) expect(faults(schema, example), path).toEqual([]);
      }
    }
  });

  test("every example request is answered with the example beside it", async () => {
    for (const [method, path, { requestBody, responses }] of operations(await documentOf())) {
      if (method !== "post") continue;
      const answer = await post(path, requestBody?.content["application/json"]?.example);
      expect(answer).toEqual({ status: 200, json: responses[200]?.content?.["application/json"]?.example });
    }
  });

  test("its schemas describe what is answered: the reference and a refusal", async () => {
    const document = await documentOf();
    const faults = readerOf(document);
    const answered = await (await app.request("/v1/reference")).json();
    expect(faults(reference("Reference"), answered)).toEqual([]);
    const refused = await post("/v1/appraisals", { find: {}, more: 1 });
    expect(refused.status).toBe(422);
    expect(faults(reference("Problem"), refused.json)).toEqual([]);
  });

  test("every object in its schemas is closed", async () => {
    const { components } = await documentOf();
    const open = Object.entries(components.schemas).flatMap(([name, schema]) => openObjects(schema, name));
    expect(open).toEqual([]);
  });

  test("its schemas refuse what the routes refuse: unknown fields, ids and values", async () => {
    const document = await documentOf();
    const faults = readerOf(document);
    const find = { category: "hybrid", era: "2000s", frameMaterial: "steel", componentTier: "mid" };
    const asked = reference("AppraisalRequest");
    expect(faults(asked, { find })).toEqual([]);
    for (const wrong of [
      { find, more: 1 },
      { find: { ...find, category: "unicycle" } },
      { find: { ...find, originality: 2 } },
      { find, observations: { "no-such-check": { level: "ok" } } },
      { find, observations: { chain: {} } },
      { find, observations: { chain: { level: "ok", front: { level: "ok" } } } },
      { find, workshop: { skill: 5 } },
    ]) {
      expect(faults(asked, wrong)).not.toEqual([]);
      expect((await post("/v1/findings", wrong)).status).toBe(422);
    }
  });
});

/** Places of object schemas that take fields they do not name. A schema of an object's values by name is closed in its own way. */
function openObjects(schema: unknown, place: string): string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const { type, additionalProperties } = schema as { type?: unknown; additionalProperties?: unknown };
  const here = type === "object" && (additionalProperties ?? true) === true ? [place] : [];
  return [
    ...here,
    ...Object.entries(schema).flatMap(([key, inner]) => openObjects(inner, `${place}/${key}`)),
  ];
}
