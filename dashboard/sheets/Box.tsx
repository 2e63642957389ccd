import { BOX_TICKED, BOX_TO_TICK } from "../words/sheetTexts.ts";
/** A box to tick by hand; drawn, so that it prints without colours and without a font that has it. */
export function Box({
  ticked = false,
  of = "",
}: {
  ticked?: boolean /** Which wheel it is for. */;
  of?: string;
}) {
  return (
    <span class="box">
      {of !== "" && <small>{of}</small>}
      <svg viewBox="0 0 12 12" role="img" aria-label={ticked ? BOX_TICKED : BOX_TO_TICK}>
        <rect x="0.75" y="0.75" width="10.5" height="10.5" />
        {ticked && <path d="M2.5 2.5l7 7M9.5 2.5l-7 7" />}
      </svg>
    </span>
  );
}
