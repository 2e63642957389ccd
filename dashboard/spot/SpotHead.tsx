import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { moved } from "../state/route.ts";
import { tabTitle } from "../words/placeNames.ts";
import { SPOT_OUT } from "../words/spotTexts.ts";

interface SpotHeadProps {
  /** Of the browser's tab. */
  readonly title: string;
  readonly heading: string;
  readonly children?: ComponentChildren;
  /** At the right end. */
  readonly sign?: ComponentChildren;
  /** The heading takes the focus: what was pressed is gone. */
  readonly focus: boolean;
}

/** The head of every stage: a way out that keeps what was seen, the heading, and a line under it. */
export function SpotHead({ title, heading, children, sign, focus }: SpotHeadProps) {
  const h1 = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = tabTitle(title);
  }, [title]);
  useEffect(() => {
    if (!focus && !moved.peek()) return;
    moved.value = false;
    h1.current?.focus({ preventScroll: true });
  }, [focus]);
  return (
    <header class="spothead">
      <a href="/">
        <span class="sr">{SPOT_OUT}</span>
        <svg viewBox="0 0 22 22" width="22" height="22" aria-hidden="true">
          <path d="M14 4 L7 11 L14 18" />
        </svg>
      </a>
      <div>
        <h1 ref={h1} tabIndex={-1}>
          {heading}
        </h1>
        {children}
      </div>
      {sign}
    </header>
  );
}
