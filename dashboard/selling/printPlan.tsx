import type { SellingPlan, WholeState } from "../api/types.ts";
import { printSheets } from "../sheets/printSheets.tsx";
import { uncapital } from "../words/count.ts";
import { sheetNote } from "../words/sellingSheet.ts";
import { STATE_NAMES } from "../words/states.ts";
import { PlanSheet } from "./PlanSheet.tsx";
import { planSpec } from "./planSpec.ts";

interface PrintedPlan {
  readonly plan: SellingPlan;
  /** Whether the lowest offers are printed too. */
  readonly shown: boolean;
  /** The plan in a sentence. */
  readonly title: string;
  /** Name of the find. */
  readonly name: string;
  readonly state: WholeState;
  /** What must be said or done before it is ridden; empty where nothing stands in the way. */
  readonly road: string;
  /** An invented find is labelled so. */
  readonly invented: boolean;
}

/** Prints the price plan on one sheet, in black; the chart as a picture, and without it where none comes of it. */
export async function printPlan(printed: PrintedPlan): Promise<void> {
  const { plan, shown, title, name, state, road, invented } = printed;
  const picture = await pictureFor(plan, shown);
  printSheets(
    <PlanSheet
      plan={plan}
      shown={shown}
      title={title}
      called={`${name}, ${uncapital(STATE_NAMES[state])}`}
      road={road}
      note={sheetNote(invented)}
      picture={picture}
    />,
  );
  // Until the dialogue closes the picture must still be there.
  if (picture !== null) addEventListener("afterprint", () => URL.revokeObjectURL(picture), { once: true });
}

async function pictureFor(plan: SellingPlan, shown: boolean): Promise<string | null> {
  // Where sheets stand, colours are those of paper, whatever theme the page has.
  const paper = document.createElement("div");
  paper.className = "sheets";
  document.body.append(paper);
  try {
    const { pictureOf } = await import("../charts/picture.ts");
    const spec = planSpec(plan, shown);
    const blob = await pictureOf({ title: "", lines: [], key: [], note: "", spec }, paper);
    const address = URL.createObjectURL(blob);
    const image = new Image();
    image.src = address;
    await image.decode();
    return address;
  } catch {
    return null;
  } finally {
    paper.remove();
  }
}
