import type { SellingFact } from "../words/sellingFacts.ts";
import { PLAN_COMES_TO } from "../words/sellingTexts.ts";

/** What the plan comes to. */
export function FactsPanel({ facts, counted }: { facts: readonly SellingFact[]; counted: string }) {
  return (
    <section class="panel" aria-labelledby="comes-title">
      <h2 id="comes-title">{PLAN_COMES_TO}</h2>
      <p class="small">{counted}</p>
      <dl class="sellfacts">
        {facts.map(({ name, figure, more }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <b>{figure}</b> <span class="small">{more}</span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
