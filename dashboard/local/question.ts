/** What is asked of the API, wherever it runs. */
export interface Question {
  readonly method: "GET" | "POST";
  readonly path: string;
  /** The JSON text; null for a route that takes none. */
  readonly body: string | null;
}

/** What the API says to it: the status and the body as the network would bring them. */
export interface Reply {
  readonly status: number;
  readonly body: string;
}

/** What the engine's thread sends: that it is ready, that it cannot start or go on, or the reply to the oldest open question. */
export type FromEngine =
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly why: string }
  | { readonly kind: "reply"; readonly reply: Reply };
