import { useEffect, useState } from "preact/hooks";

/** How long an answer stands before it is spoken, in milliseconds: the last of several in a row alone. */
const SPEAK_MS = 500;

/**
 * Speaks a sentence to a screen reader once, shortly after it came.
 * @param text null while there is none to speak: what was spoken stays
 * @param silenced what was spoken holds no more: it is gone at once, not half a second later
 */
export function Spoken({ text, silenced = false }: { text: string | null; silenced?: boolean }) {
  const [spoken, setSpoken] = useState("");
  useEffect(() => {
    if (silenced) setSpoken("");
    if (text === null) return;
    const timer = setTimeout(() => setSpoken(text), SPEAK_MS);
    return () => clearTimeout(timer);
  }, [text, silenced]);
  return (
    <p class="sr" aria-live="polite">
      {spoken}
    </p>
  );
}
