import { useCallback, useEffect, useState } from "preact/hooks";

/** A script that is fetched when it is first wanted. */
export interface Later<T> {
  /** Null while it is under way, or did not come. */
  readonly loaded: T | null;
  readonly failed: boolean;
  again(): void;
}

/**
 * Fetches a part of a page that its first sight does not need.
 * @param load must stay the same between renders
 */
export function useLater<T extends object>(load: () => Promise<T>): Later<T> {
  const [state, setState] = useState<T | "waiting" | "failed">("waiting");
  useEffect(() => {
    let gone = false;
    if (state !== "waiting") return;
    load().then(
      (loaded) => !gone && setState(loaded),
      () => !gone && setState("failed"),
    );
    return () => {
      gone = true;
    };
  }, [load, state]);
  const again = useCallback(() => setState("waiting"), []);
  return { loaded: typeof state === "string" ? null : state, failed: state === "failed", again };
}
