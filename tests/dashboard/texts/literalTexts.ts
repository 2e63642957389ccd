import { parseSync } from "vite";

/** A text for the reader that stands in a source itself and not in the catalogue. */
export interface LiteralText {
  /** Counted from one. */
  readonly line: number;
  readonly text: string;
}

/** Any node of the syntax tree. */
type Node = { readonly type: string; readonly start: number } & Readonly<Record<string, unknown>>;

/** Attributes that a reader sees or hears, and properties by which components take such texts. */
const SHOWN = new Set(
  [
    "aria-label",
    "aria-description",
    "aria-roledescription",
    "title",
    "placeholder",
    "alt",
    "label",
    "hint",
    "unit",
    "before",
  ].concat(["caption", "text", "summary"]),
);
/** Attributes whose value no reader sees: names for the browser, and shapes. */
const UNSEEN = new Set(["class", "style", "id", "key", "href", "d", "points", "transform", "viewBox"]);
/** Nodes whose texts are code: what is imported, types, errors for whoever writes the code. */
const CODE = /^Import|^ThrowStatement$|^TS(?!As|Satisfies|NonNull)/;
/** The name and the signs of units, the same wherever they stand; the strokes of a drawn path. */
const KEPT = /^\s*(Spokeworth|\/h|h|mm|mm²)\s*$|^[MLHVCSQAZ\d\s.,-]+$/;

const LETTER = /\p{L}/u;
/** A word with a space beside it, or one with a capital: such a text is written for a reader. */
const READ = /\p{L}.*\s|\s.*\p{L}|^\p{Lu}\p{Ll}/su;

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";

/** What a node shows of its own parts: the branches of a choice, the ends of a sum, the words of a template. */
function shownParts(node: Node): readonly unknown[] {
  switch (node.type) {
    case "JSXElement":
    case "JSXFragment":
      return node.children as readonly unknown[];
    case "ConditionalExpression":
      return [node.consequent, node.alternate];
    case "LogicalExpression":
      return node.operator === "&&" ? [node.right] : [node.left, node.right];
    case "BinaryExpression":
      return node.operator === "+" ? [node.left, node.right] : [];
    case "TemplateLiteral":
      return node.quasis as readonly unknown[];
    case "JSXExpressionContainer":
    case "ParenthesizedExpression":
    case "TSAsExpression":
      return [node.expression];
    default:
      return [];
  }
}

/** What a node holds that is compared or looked up and never shown: the word of a comparison or a case, a field's name. */
function comparedParts(node: Node): readonly unknown[] {
  switch (node.type) {
    case "BinaryExpression":
      return node.operator === "+" ? [] : [node.left, node.right];
    case "SwitchCase":
      return [node.test];
    case "Property":
      return [node.key];
    case "MemberExpression":
      return [node.property];
    case "ExportAllDeclaration":
    case "ExportNamedDeclaration":
      return [node.source];
    default:
      return [];
  }
}

/** The text that a node is, else null. */
function textOf(node: Node): string | null {
  if (node.type === "JSXText") return node.value as string;
  if (node.type === "TemplateElement") return (node.value as { readonly cooked: string }).cooked;
  return node.type === "Literal" && typeof node.value === "string" ? node.value : null;
}

/**
 * Every text of a source that a reader may see or hear: words between tags and in attributes that are shown, whatever they
 * are, and each other string that reads as words.
 * @throws Error where the source does not parse
 */
export function literalTexts(file: string, source: string): LiteralText[] {
  const { program, errors } = parseSync(file, source);
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]?.message}`);
  const found: LiteralText[] = [];

  function see(value: unknown, shown: boolean): void {
    if (Array.isArray(value)) for (const each of value) see(each, shown);
    if (!isNode(value) || CODE.test(value.type)) return;
    const text = textOf(value);
    if (text !== null) note(text, value.start, shown);
    else if (value.type === "JSXAttribute") seeAttribute(value);
    else seeParts(value, shown || /^JSX(Element|Fragment)$/.test(value.type));
  }

  function note(text: string, start: number, shown: boolean): void {
    if (!(shown ? LETTER : READ).test(text) || KEPT.test(text)) return;
    const line = source.slice(0, start + text.search(/\S/)).split("\n").length;
    found.push({ line, text: text.trim().replace(/\s+/g, " ") });
  }

  function seeAttribute({ name, value }: Node): void {
    const called = String((name as Node).name);
    if (!UNSEEN.has(called)) see(value, SHOWN.has(called));
  }

  function seeParts(node: Node, shown: boolean): void {
    const [inSight, compared] = [shownParts(node), comparedParts(node)];
    for (const part of Object.values(node).flat()) {
      if (!compared.includes(part)) see(part, shown && inSight.includes(part));
    }
  }

  see(program, false);
  return found;
}
