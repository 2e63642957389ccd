import type { Appraisal, Reference, ReportedFinding } from "../api/types.ts";
import { levelWords } from "../words/plain.ts";
import type { Say } from "./catalogue.ts";

/** Papers have a part of the advert to themselves; lights and bell, of the same group, are told with the faults. */
const PAPERS: ReadonlySet<string> = new Set(["serial", "ownership", "recall"]);

/** Findings in the words of the reference. */
export interface FaultWords {
  readonly isPaper: (check: string) => boolean;
  readonly check: (id: string) => string;
  /** The check with its wheel: "Tyre tread, sidewall and casing, rear". */
  readonly name: (finding: ReportedFinding) => string;
  /** The whole line, marked where it stops riding. */
  readonly told: (finding: ReportedFinding) => string;
  /** What was found about the papers, sound or not. */
  readonly papers: (answer: Pick<Appraisal, "findings">) => readonly string[];
}

export function faultWords({ checks }: Pick<Reference, "checks">, say: Say): FaultWords {
  const byId = new Map(checks.map((check) => [check.id, check]));
  const isPaper = (id: string) => PAPERS.has(id);
  const check = (id: string) => byId.get(id)?.name ?? id;
  const name = ({ check: id, position }: ReportedFinding) => {
    const place = position === "front" ? "placeFront" : position === "rear" ? "placeRear" : null;
    return place === null ? check(id) : say(place, { check: check(id) });
  };
  const told = (finding: ReportedFinding) => {
    const known = byId.get(finding.check);
    const level = levelWords(known ?? { levels: [] }, finding.level);
    const stops = finding.safetyBlock && known?.group !== "paperwork";
    return say(stops ? "faultStopsRiding" : "fault", { check: name(finding), level, note: finding.note });
  };
  const papers = ({ findings }: Pick<Appraisal, "findings">) =>
    findings.filter((finding) => isPaper(finding.check)).map(told);
  return { isPaper, check, name, told, papers };
}
