import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { literalTexts } from "./literalTexts.ts";

const DASHBOARD = fileURLToPath(new URL("../../../dashboard/", import.meta.url));

const components = readdirSync(DASHBOARD, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".tsx"))
  .sort();

const literals = (file: string) =>
  literalTexts(file, readFileSync(DASHBOARD + file, "utf8")).map(
    ({ line, text }) => `dashboard/${file}:${line} ${text}`,
  );

test("texts for the reader stand in dashboard/words, and in no component", () => {
  expect(components.length).toBeGreaterThan(150);
  expect(components.flatMap(literals)).toEqual([]);
});

describe("the check sees", () => {
  test.each([
    ["words between tags", "<p>Look first</p>", ["Look first"]],
    ["one small word between tags", "<p>{n} picks</p>", ["picks"]],
    ["an attribute that is read out", '<b aria-label="main" />', ["main"]],
    [
      "a property that a component shows",
      '<Field label="price" hint={ok ? "" : "too low"} />',
      ["price", "too low"],
    ],
    ["the branches of a choice", '<p>{made ? "done" : "open"}</p>', ["done", "open"]],
    ["what follows a condition", '<p>{made && "done"}{name || "none"}</p>', ["done", "none"]],
    ["the words of a template", "<p>{`$" + "{n} of $" + "{all}`}</p>", ["of"]],
    ["a name kept outside the markup", 'const PLACES = [{ page: "finds", name: "Finds" }];', ["Finds"]],
    ["an argument that reads as words", 'say("the larger one");', ["the larger one"]],
    ["a part of a sentence", 'const text = told + " and";', ["and"]],
  ])("%s", (_, source, texts) => {
    expect(literalTexts("a.tsx", source).map(({ text }) => text)).toEqual(texts);
  });

  test.each([
    ["a class", '<p class={wide ? "panel wide" : "panel"} id="open-title" />'],
    ["an address", '<a href="/finds">{NAME}</a>'],
    ["what is compared", 'if (event.key === "Escape") close();'],
    ["a case and a field", 'switch (key) { case "Enter": go({ Accept: map["Content type"] }); }'],
    ["an import and a type", 'import a from "./Some words.ts"; type B = "Some words";'],
    ["an error for whoever writes the code", 'throw new Error("There is no such element");'],
    ["a drawn path and a unit", '<p><path d="M4 6 L10 6" />{length} mm</p>'],
    ["a value for a component", '<Warning kind="stop" course={open ? "leave" : "restore"} />'],
  ])("no text in %s", (_, source) => {
    expect(literalTexts("a.tsx", source)).toEqual([]);
  });

  test("the line of a text that begins on the line after its tag", () => {
    expect(literalTexts("a.tsx", "<p>\n  Look\n  first\n</p>")).toEqual([{ line: 2, text: "Look first" }]);
  });
});
