import type { ComponentChildren } from "preact";
import { Blank } from "./Blank.tsx";

interface SheetHeadProps {
  readonly title: string;
  /** Which bike, and what is known of it. */
  readonly bike: string;
  readonly facts: string;
  /** What is invented on it; empty where nothing is. */
  readonly invented: string;
  readonly children?: ComponentChildren;
}

/** The head of a sheet: what it is, of which bike, and what on it is invented. */
export function SheetHead({ title, bike, facts, invented, children }: SheetHeadProps) {
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
        <Blank label="Date" />
        <Blank label="By" />
        <Blank label="Frame number" />
      </div>
    </header>
  );
}
