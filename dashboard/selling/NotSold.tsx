import type { Appraisal } from "../api/types.ts";
import { Halt } from "../find/Halt.tsx";
import type { Find } from "../finds/find.ts";
import { Warning } from "../signs/Warning.tsx";

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
      There is no plan of weeks for pieces that sell one by one. What each of them fetches stands with{" "}
      <a href={at}>the find</a>, and what the advert must say on <a href={`${at}/listing`}>what to ask</a>.
    </p>
  );
}
