import type { Cure } from "./cure.ts";
import type { CureSlot } from "./cureSlot.ts";
import type { Ledger } from "./ledger.ts";

/** Work that may end the frame, by resource index. */
export type RiskSet = ReadonlySet<number>;

/** Whether all of the first are among the second. */
export function within(some: RiskSet, all: RiskSet): boolean {
  for (const one of some) if (!all.has(one)) return false;
  return true;
}

/** Every union of the risks that one cure for each fault can bring, the most first. */
export function riskSets(
  slots: readonly CureSlot[],
  risky: readonly (readonly (readonly number[])[])[],
): readonly RiskSet[] {
  let sets = new Map<string, RiskSet>([["", new Set()]]);
  slots.forEach(({ mandatory }, place) => {
    const brought = risky[place]!;
    if (brought.every((risks) => risks.length === 0)) return;
    const next = new Map(mandatory ? [] : sets);
    for (const set of sets.values()) {
      for (const risks of brought) {
        const union = new Set([...set, ...risks].sort((a, b) => a - b));
        next.set([...union].join(), union);
      }
    }
    sets = next;
  });
  return [...sets.values()].sort((a, b) => b.size - a.size);
}

/** Work of a cure that may end the frame, beside what is done in any case. */
export function risksOf({ resources }: Cure, base: readonly number[], ledger: Ledger): readonly number[] {
  return resources.filter((index) => ledger.resources[index]!.endsFrame > 0 && !base.includes(index));
}
