import { Warning } from "../signs/Warning.tsx";
import { roadWords } from "../words/sellingRoad.ts";
import type { SaleGround } from "./road.ts";

/** What must be said or done before it is ridden; nothing where nothing stands in the way. */
export function RoadNote({ ground }: { ground: Extract<SaleGround, { kind: "open" }> }) {
  const words = roadWords(ground);
  if (words === null) return null;
  return (
    <Warning kind="mind">
      <b>{words.said}</b> {words.because}
    </Warning>
  );
}
