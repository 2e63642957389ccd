import { describe, expect, test } from "vitest";
import type { AttributeDefault, AttributeName } from "../../../worker/engine/bicycle.ts";
import {
  requireSettlingDefaults,
  settleAttributes,
} from "../../../worker/engine/inspection/attributeDefaults.ts";
import type { DescribedAttributes } from "../../../worker/engine/inspection/find.ts";
import { SMALL_TABLES } from "./smallTables.ts";

const STEEL: DescribedAttributes = {
  category: "touring",
  era: "1980s",
  frameMaterial: "steel",
  componentTier: "mid",
};
const REST = SMALL_TABLES.attributeDefaults;

function row(attribute: AttributeName, value: string, ...when: [AttributeName, string][]): AttributeDefault {
  return {
    attribute,
    value,
    when: when.map(([name, one]) => ({ attribute: name, isOneOf: [one] })),
  };
}

describe("attributes", () => {
  test("what was described is never overruled by a default", () => {
    const described = { ...STEEL, brakeType: "drum", steering: "threadless" } as const;
    expect(settleAttributes(described, REST)).toMatchObject(described);
  });

  test("the first row that holds decides", () => {
    const rows = [row("fork", "suspension", ["category", "touring"]), row("fork", "rigid"), ...REST];
    expect(settleAttributes(STEEL, rows).fork).toBe("suspension");
    expect(settleAttributes({ ...STEEL, category: "bmx" }, rows).fork).toBe("rigid");
  });

  test("a row may ask about what an earlier row settled", () => {
    const rows = [
      row("forkMaterial", "carbon"),
      row("hasCarbon", "yes", ["forkMaterial", "carbon"]),
      ...REST,
    ];
    expect(settleAttributes(STEEL, rows).hasCarbon).toBe("yes");
  });

  test("a described carbon part with hasCarbon no is refused, so that no check of carbon is lost", () => {
    const denied = { ...STEEL, forkMaterial: "carbon", hasCarbon: "no" } as const;
    expect(() => settleAttributes(denied, REST)).toThrow(/hasCarbon requires yes.*forkMaterial is carbon/);
  });

  test("an attribute left open is a fault of the table", () => {
    const rows = REST.filter((one) => one.attribute !== "hub");
    expect(() => settleAttributes(STEEL, rows)).toThrow(/^hub requires a default/);
    expect(() => requireSettlingDefaults(rows)).toThrow(/^hub requires a last default/);
  });

  test("a row that asks about what no earlier row settled is refused", () => {
    const rows = [row("hasCarbon", "yes", ["forkMaterial", "carbon"]), ...REST];
    expect(() => requireSettlingDefaults(rows)).toThrow(/conditions on attributes settled by earlier rows/);
  });

  test("a value that the attribute does not have is refused", () => {
    expect(() => requireSettlingDefaults([row("hub", "square"), ...REST])).toThrow(
      /one of the attribute's values/,
    );
  });
});
