import type { ComponentChildren } from "preact";
import { HEAD_BLANKS } from "../words/sheetTexts.ts";
import { Blank } from "./Blank.tsx";

interface SheetHeadProps {
  readonly title: string;
  /** Which bike, and what is known of it. */
  readonly bike: string;
  readonly facts: string;
  /** What is invented on it; empty where nothing is. */
  readonly invented: string;
  /** What is written down by hand. */
  readonly blanks?: readonly string[];
  readonly children?: ComponentChildren;
}

/** The head of a sheet: what it is, of which bike, and what on it is invented. */
export function SheetHead(props: SheetHeadProps) {
  const { title, bike, facts, invented, blanks = HEAD_BLANKS, children } = props;
  return (
    <header>
      <h1>
        {title}
        {bike !== "" && `: ${bike}`}
      </h1>
      {facts !== "" && <p>{facts}</p>}
      {invented !== "" && (
        <p>
          <b>{invented}</b>
        </p>
      )}
      {children}
      <div class="headblanks">
        {blanks.map((label) => (
          <Blank key={label} label={label} />
        ))}
      </div>
    </header>
  );
}
