import { useEffect, useRef } from "preact/hooks";

/**
 * Does something once values have changed since they were first shown. An effect that ran at the first showing too would come after
 * the first letter of a quick hand, and take it away.
 * @param values compared one by one
 */
export function useChanged(values: readonly unknown[], follow: () => void): void {
  const shown = useRef(values);
  useEffect(() => {
    if (values.every((value, place) => value === shown.current[place])) return;
    shown.current = values;
    follow();
  }, values);
}
