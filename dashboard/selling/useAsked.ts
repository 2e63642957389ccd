import { useEffect } from "preact/hooks";
import type { Asking } from "../state/asking.ts";

/** Keeps an answer up to date with its question while the page is open; null asks nothing. Again when the connection is back. */
export function useAsked<Body, Answer>(asking: Asking<Body, Answer>, body: Body | null): void {
  const question = JSON.stringify(body);
  useEffect(() => {
    if (body !== null) asking.ask(body, asking.answer.peek() === null ? 0 : undefined);
  }, [asking, question]);
  useEffect(() => {
    const online = () => {
      if (asking.fault.peek()?.kind === "no-signal") asking.again();
    };
    addEventListener("online", online);
    return () => removeEventListener("online", online);
  }, [asking]);
}
