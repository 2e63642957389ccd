/** The colours of the page, as the canvas needs them. Names are those of the tokens. */
export interface Palette {
  readonly ink: string;
  readonly surface: string;
  readonly grid: string;
  readonly edge: string;
  readonly goal: string;
  readonly lossGround: string;
  readonly band: number;
  readonly bandStrong: number;
  of(token: string): string;
}

/** Reads the tokens where the canvas stands, so that light, dark and higher contrast are followed. */
export function paletteOf(canvas: Element): Palette {
  const style = getComputedStyle(canvas);
  const of = (token: string) => style.getPropertyValue(token).trim();
  return {
    ink: of("--ink"),
    surface: of("--surface"),
    grid: of("--grid"),
    edge: of("--edge"),
    goal: of("--goal-line"),
    lossGround: of("--loss-ground"),
    band: Number(of("--band")),
    bandStrong: Number(of("--band-strong")),
    of,
  };
}

/** Calls back when the page turns light or dark, by the system or by its theme attribute. Returns how to stop. */
export function onTheme(changed: () => void): () => void {
  const queries = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"].map((query) =>
    matchMedia(query),
  );
  for (const query of queries) query.addEventListener("change", changed);
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
  return () => {
    for (const query of queries) query.removeEventListener("change", changed);
    observer.disconnect();
  };
}
