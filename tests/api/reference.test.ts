import { describe, expect, test } from "vitest";
import { referenceAnswer } from "../../worker/api/answers/reference.ts";
import { CURRENCIES } from "../../worker/api/schemas/currency.ts";
import type { Reference } from "../../worker/api/types.ts";
import { ATTRIBUTE_VALUES } from "../../worker/engine/bicycle.ts";
import { readCatalogue } from "../../worker/tables.ts";
import { ask } from "./ask.ts";

async function reference(): Promise<Reference> {
  const answer = await ask("/v1/reference");
  expect(answer.status).toBe(200);
  return answer.json<Reference>();
}

describe("GET /v1/reference", () => {
  test("holds no field that its schema does not declare, and every one that it does", async () => {
    const answer = await reference();
    expect(referenceAnswer.parse(answer)).toEqual(answer);
  });

  test("gives every attribute its values in order, each with a label of its own", async () => {
    const { attributes, attributeLabels } = await reference();
    for (const [name, values] of Object.entries(ATTRIBUTE_VALUES)) {
      const choices = attributes[name as keyof typeof ATTRIBUTE_VALUES];
      expect(choices.map(({ value }) => value)).toEqual(values);
      expect(new Set(choices.map(({ label }) => label)).size).toBe(values.length);
    }
    expect(Object.keys(attributeLabels)).toEqual(Object.keys(ATTRIBUTE_VALUES));
  });

  test("gives every check, job, part, tool and caution of the tables", async () => {
    const { checks, operations, parts, tools, cautions, attributeDefaults, defaults } = await reference();
    const tables = readCatalogue();
    expect(checks).toEqual(tables.inspection.checks);
    expect(attributeDefaults).toEqual(tables.inspection.attributeDefaults);
    expect(defaults).toEqual(tables.defaults);
    const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);
    expect(ids(operations)).toEqual(ids(tables.service.operations));
    expect(ids(parts)).toEqual(ids(tables.service.parts));
    expect(ids(tools)).toEqual(ids(tables.service.tools));
    expect(ids(cautions)).toEqual(ids(tables.cautions));
  });

  test("every check is in a group that has a label, and every group has a check", async () => {
    const { checks, groups } = await reference();
    expect(new Set(checks.map(({ group }) => group))).toEqual(new Set(groups.map(({ value }) => value)));
  });

  test("the default currency is one of the currencies, which come in order and once each", async () => {
    const { currency, currencies } = await reference();
    expect(currencies).toContain(currency);
    expect(currencies).toEqual([...new Set(currencies)].sort());
  });

  test("every currency is known to the locale data of the runtime (Unicode CLDR)", () => {
    // A code younger than the runtime's list is not in it: the leone of 2022, the Zimbabwe Gold, the Caribbean guilder.
    const young = ["SLE", "ZWG", "XCG"];
    const known = new Set(Intl.supportedValuesOf("currency"));
    expect(CURRENCIES.filter((code) => !known.has(code) && !young.includes(code))).toEqual([]);
  });

  test("is not sent again to whoever has it (RFC 9110, section 13.1.2)", async () => {
    const first = await ask("/v1/reference");
    const etag = first.headers.get("ETag") ?? "";
    await first.text();
    expect(etag).toMatch(/^"[0-9a-f]{32}"$/);
    for (const known of [etag, `W/${etag}`, `"other", ${etag}`, "*"]) {
      const again = await ask("/v1/reference", { headers: { "If-None-Match": known } });
      expect([again.status, await again.text(), again.headers.get("ETag")]).toEqual([304, "", etag]);
    }
    const other = await ask("/v1/reference", { headers: { "If-None-Match": '"other"' } });
    expect(other.status).toBe(200);
    await other.text();
  });
});
