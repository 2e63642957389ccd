import type { Attributes } from "../bicycle.ts";
import { holds } from "../bicycle.ts";
import type { Finding, Inspection } from "../inspection/finding.ts";
import type { DecidingTest, Operation } from "../service/operation.ts";
import type { Book } from "./book.ts";

/** A test that applies to a finding of this bike. */
export interface ApplicableTest {
  readonly operation: Operation;
  readonly test: DecidingTest;
  readonly finding: Finding;
}

/** Tests whose question stands: the paint line that may be a crack, the number not yet looked up. */
export function decidingTests(
  attributes: Attributes,
  inspection: Inspection,
  book: Book,
): readonly ApplicableTest[] {
  return book.service.testing
    .filter(
      ({ onlyIf, notOnMaterials }) =>
        holds(onlyIf, attributes) && !notOnMaterials.includes(attributes.frameMaterial),
    )
    .flatMap((operation) =>
      operation.tests.flatMap((test) => {
        const finding = inspection.findings.find(
          ({ check, level }) => check === test.of && test.at.includes(level),
        );
        return finding ? [{ operation, test, finding }] : [];
      }),
    );
}
