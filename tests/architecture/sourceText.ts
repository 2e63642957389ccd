/** One import or re-export in a file. */
export interface Import {
  /** The text between the quotes. */
  specifier: string;
  /** Whether it is erased on compiling: `import type`, `export type`. */
  typeOnly: boolean;
}

const TOKENS = /\/\*[\s\S]*?\*\/|\/\/[^\n]*|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\[\s\S]|[^`\\])*`/g;

/** A TypeScript text without comments and without the words in its texts; what a template computes is kept. */
export function withoutProse(text: string): string {
  return text.replace(TOKENS, (token) => {
    if (token.startsWith("/")) return " ";
    if (!token.startsWith("`")) return '""';
    return [...token.matchAll(/\$\{([^}]*)\}/g)].map((part) => `(${part[1]})`).join(" ");
  });
}

/**
 * Every import of a TypeScript text: statements, re-exports, and `import("...")` in code and in types.
 * `import { type A }` counts as an import of values, since the import itself stays on compiling.
 */
export function importsIn(text: string): Import[] {
  const texts: string[] = [];
  // Texts give way to their number, so that what looks like an import inside one is not taken for it.
  const code = text.replace(TOKENS, (token) =>
    token.startsWith("/") ? " " : `"${texts.push(token.slice(1, -1)) - 1}"`,
  );
  const statements = /(?:^|[;\n])\s*(?:import|export)\s+(type\s+)?(?:[\w$*{][^"';=()]*?\bfrom\s*)?"(\d+)"/g;
  const calls = /\bimport\s*\(\s*()"(\d+)"/g;
  return [...code.matchAll(statements), ...code.matchAll(calls)].map(([, type, number]) => ({
    specifier: texts[Number(number)] ?? "",
    typeOnly: type !== undefined && type !== "",
  }));
}
