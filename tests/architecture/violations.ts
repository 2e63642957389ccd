import { posix } from "node:path";
import { type Room, roomOf } from "./rooms.ts";
import { type Import, importsIn, withoutProse } from "./sourceText.ts";

/** What the engine may not touch: the clock, chance, the platform, and anything that waits. */
const BANNED_IN_ENGINE = [
  "Date",
  "Intl",
  "fetch",
  "crypto",
  "process",
  "performance",
  "console",
  "navigator",
  "globalThis",
  "setTimeout",
  "setInterval",
  "queueMicrotask",
  "Promise",
  "async",
  "await",
  "Math.random",
  "import.meta",
] as const;

/** The functions and constants of Math that IEEE 754 and ECMA-262 specify to the last digit. */
const EXACT_OF_MATH = [
  "abs",
  "ceil",
  "clz32",
  "floor",
  "imul",
  "LN2",
  "LOG2E",
  "max",
  "min",
  "PI",
  "round",
  "sign",
  "sqrt",
  "trunc",
];

/** Any other use of Math, and the power operator: the last digit is the runtime's maker's. */
const INEXACT = new RegExp(
  `(?<![\\w$.])Math\\b(?!\\s*\\.\\s*(?:random|${EXACT_OF_MATH.join("|")})\\b)(?:\\s*\\.\\s*\\w+)?|\\*\\*`,
  "g",
);

/**
 * What in one source file breaks the agreed direction of imports or the engine's purity; empty when nothing does.
 * @param file its path from the top of the project, with "/"
 * @param text its content
 */
export function violations(file: string, text: string): string[] {
  const room = roomOf(file);
  if (room === undefined) {
    return [
      `${file} belongs to no room: give it one in tests/architecture/rooms.ts, with what it may import and why`,
    ];
  }
  const imports = importsIn(text).flatMap((one) => refusedImport(file, room, one));
  return file.startsWith("worker/engine/") ? [...imports, ...impurities(file, text)] : imports;
}

function refusedImport(file: string, room: Room, { specifier, typeOnly }: Import): string[] {
  const refuse = (what: string) => [`${file} imports ${what}, but ${room.name} may not, because ${room.why}`];
  if (!specifier.startsWith(".")) {
    return room.packages.some((pattern) => matches(specifier, pattern))
      ? []
      : refuse(`the package ${specifier}`);
  }
  const target = posix.normalize(posix.join(posix.dirname(file), specifier));
  const other = roomOf(target);
  if (other === undefined) return refuse(`${target}, which belongs to no room`);
  if (other.name === room.name || room.rooms.includes(other.name) || room.rooms.includes("*")) return [];
  if (!room.types.includes(other.name)) return refuse(target);
  return typeOnly ? [] : refuse(`values of ${target} (types would do: "import type")`);
}

function matches(specifier: string, pattern: string): boolean {
  return pattern.endsWith("*") ? specifier.startsWith(pattern.slice(0, -1)) : specifier === pattern;
}

function impurities(file: string, text: string): string[] {
  const code = withoutProse(text);
  const inexact = new Set((code.match(INEXACT) ?? []).map((use) => use.replace(/\s/g, "")));
  return [
    ...BANNED_IN_ENGINE.filter((name) => uses(code, name)).map(
      (name) =>
        `${file} uses ${name}, but the engine is pure and synchronous: the same request gives the same bytes`,
    ),
    ...[...inexact].map(
      (use) =>
        `${file} uses ${use}, whose last digit differs between runtimes: take it from worker/engine/statistics/elementary, so that browser and server give the same bytes`,
    ),
  ];
}

/** Whether code uses a name of the platform: not a member (`plan.process`), not the name of a field (`process: ...`). */
function uses(code: string, name: string): boolean {
  return new RegExp(`(?<![\\w$.])${name.replace(".", "\\s*\\.\\s*")}(?![\\w$]|\\s*\\??\\s*:)`).test(code);
}
