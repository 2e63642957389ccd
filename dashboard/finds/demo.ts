import demo from "../../data/demo-finds.json" with { type: "json" };
import type { AppraisalBody } from "../api/types.ts";
import type { Find } from "./find.ts";

/** The invented finds. Their figures come from the API like those of any other. */
export const DEMO_FINDS: readonly Find[] = demo.finds.map(({ id, name, called, where, line, appraisal }) => ({
  id,
  name,
  called,
  where,
  line,
  invented: true,
  body: appraisal as AppraisalBody,
}));
