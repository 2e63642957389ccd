import type { Strip } from "./pen.ts";
import type { Scale } from "./scale.ts";

/** One course: its outcomes, or the single sign of one that has none. */
export interface DotRow {
  readonly values: readonly number[];
  /** Where a sign stands instead of dots; null where there are dots. */
  readonly single: { readonly at: number; readonly sign: string } | null;
  readonly token: string;
}

export interface DotsSettings {
  readonly rows: readonly DotRow[];
  readonly strips: readonly Strip[];
  readonly scale: Scale;
  readonly active: number | null;
  readonly width: number;
  readonly height: number;
}
