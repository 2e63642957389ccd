import type { Hono } from "hono";
import type * as z from "zod";

/** What a route takes: its JSON body, with one that works. */
export interface RouteBody {
  readonly schema: z.ZodType;
  readonly example: unknown;
  /** The largest it may be. */
  readonly limitBytes: number;
}

/** One route: what it is, for the document, and how it answers. The app and the document are both made from it. */
export interface Route {
  readonly method: "get" | "post";
  readonly path: string;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  /** Null for a route that takes none. */
  readonly body: (() => RouteBody) | null;
  readonly answer: z.ZodType;
  /** An answer to show in the document, or null. */
  readonly exampleAnswer: (() => unknown) | null;
  /** Answers 304 to whoever has the document. */
  readonly tagged: boolean;
  /** Puts its handlers on the app, at its path and method. */
  readonly mount: (app: Hono) => void;
}
