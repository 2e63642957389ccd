import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { moved } from "../state/route.ts";
import { tabTitle } from "../words/placeNames.ts";

/** The one heading of a page: its answer in a sentence. After a move inside the dashboard it takes the focus. */
export function Heading({ title, children }: { title: string; children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = tabTitle(title);
  }, [title]);
  useEffect(() => {
    if (!moved.peek()) return;
    moved.value = false;
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}
