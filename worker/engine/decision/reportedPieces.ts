import type { ReportedPiece } from "./appraisal.ts";
import type { Situation } from "./situation.ts";

/** The list of pieces with minutes at the user's own speed. */
export function reportedPieces({ parts, settled }: Situation): readonly ReportedPiece[] {
  const { speedFactor } = settled.workshop;
  return parts.list.pieces.map((piece) => ({ ...piece, minutes: speedFactor * piece.minutes }));
}
