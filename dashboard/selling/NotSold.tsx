import type { Appraisal } from "../api/types.ts";
import { Halt } from "../find/Halt.tsx";
import type { Find } from "../finds/find.ts";
import { Warning } from "../signs/Warning.tsx";
import { IN_PIECES_ASK, IN_PIECES_BEFORE, IN_PIECES_BETWEEN, IN_PIECES_FIND } from "../words/sellingTexts.ts";

interface NotSoldProps {
  readonly find: Find;
  readonly answer: Appraisal;
  /** No state but that in pieces is open. */
  readonly inPieces: boolean;
  /** Why it may not be sold; null where it may. */
  readonly why: string | null;
}

/** Why there is no price plan; nothing while one is under way. */
export function NotSold({ find, answer, inPieces, why }: NotSoldProps) {
  const at = `/finds/${encodeURIComponent(find.id)}`;
  if (answer.decision.stop !== null) return <Halt appraisal={answer} />;
  if (why !== null) {
    return (
      <Warning kind="stop">
        <b>{why}</b>
      </Warning>
    );
  }
  if (!inPieces) return null;
  return (
    <p>
      {IN_PIECES_BEFORE} <a href={at}>{IN_PIECES_FIND}</a>
      {IN_PIECES_BETWEEN} <a href={`${at}/listing`}>{IN_PIECES_ASK}</a>.
    </p>
  );
}
