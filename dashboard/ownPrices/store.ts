import { type ReadonlySignal, signal } from "@preact/signals";
import type { Shelf } from "../state/shelf.ts";
import { type Contents, contentsIn, NO_CONTENTS, VERSION } from "./kept.ts";
import { rowKey } from "./rowKey.ts";
import { type KeptSale, MOST_SALES, type PartPrice, type Sale } from "./sale.ts";

/** What became of sales that were to be added. */
export interface Added {
  readonly added: number;
  /** Kept before, and not kept twice. */
  readonly already: number;
  /** Not kept, because there is room for 5,000 alone. */
  readonly over: number;
}

/** The user's own sales and prices, kept on a shelf. */
export interface OwnPrices {
  readonly sales: ReadonlySignal<readonly KeptSale[]>;
  readonly partPrices: ReadonlySignal<readonly PartPrice[]>;
  /** What went wrong with keeping them, to be shown; null where nothing did. */
  readonly trouble: ReadonlySignal<"unreadable" | "not-kept" | null>;
  /** What was there before the last removal; null once anything else changed. */
  readonly removed: ReadonlySignal<Contents | null>;
  addSales(sales: readonly Sale[]): Added;
  /** Changes which finds are the same model as a sale. */
  setSameModel(id: string, finds: readonly string[]): void;
  removeSale(id: string): void;
  /** Each replaces what was kept for its part. */
  putPartPrices(prices: readonly PartPrice[]): void;
  removePartPrice(part: string): void;
  removeAll(): void;
  /** Takes the last removal back. */
  undo(): void;
}

/** Opens the shelf. What cannot be read is left out, and said so; it is overwritten by the next change. */
export function openOwnPrices(place: Shelf): OwnPrices {
  const kept = place.read();
  const found = kept === "nothing" ? NO_CONTENTS : kept === "unreadable" ? null : contentsIn(kept.value);
  const sales = signal<readonly KeptSale[]>(found?.sales ?? []);
  const partPrices = signal<readonly PartPrice[]>(found?.partPrices ?? []);
  const trouble = signal<"unreadable" | "not-kept" | null>(found === null ? "unreadable" : null);
  const removed = signal<Contents | null>(null);

  function set(next: Partial<Contents>, before: Contents | null = null): void {
    sales.value = next.sales ?? sales.value;
    partPrices.value = next.partPrices ?? partPrices.value;
    removed.value = before;
    const contents = { version: VERSION, sales: sales.value, partPrices: partPrices.value };
    trouble.value = place.write(contents) ? null : "not-kept";
  }
  const remove = (next: Partial<Contents>) => set(next, { sales: sales.value, partPrices: partPrices.value });

  return {
    sales,
    partPrices,
    trouble,
    removed,
    addSales(wanted) {
      const fresh = newOf(wanted, sales.value);
      const room = fresh.slice(0, MOST_SALES - sales.value.length);
      const first = nextNumber(sales.value);
      if (room.length > 0) {
        set({ sales: [...sales.value, ...room.map((sale, i) => ({ ...sale, id: `sale-${first + i}` }))] });
      }
      return {
        added: room.length,
        already: wanted.length - fresh.length,
        over: fresh.length - room.length,
      };
    },
    setSameModel(id, finds) {
      set({ sales: sales.value.map((sale) => (sale.id === id ? withFinds(sale, finds) : sale)) });
    },
    removeSale: (id) => remove({ sales: sales.value.filter((sale) => sale.id !== id) }),
    putPartPrices(prices) {
      const parts = new Map([...partPrices.value, ...prices].map((one) => [one.part, one]));
      if (prices.length > 0) set({ partPrices: [...parts.values()] });
    },
    removePartPrice: (part) => remove({ partPrices: partPrices.value.filter((one) => one.part !== part) }),
    removeAll: () => remove(NO_CONTENTS),
    undo() {
      if (removed.value !== null) set(removed.value);
    },
  };
}

function withFinds({ sameModelAs: _, ...sale }: KeptSale, finds: readonly string[]): KeptSale {
  return finds.length === 0 ? sale : { ...sale, sameModelAs: finds };
}

/** Those that are not kept yet, whichever finds they are the same model as. */
function newOf(wanted: readonly Sale[], kept: readonly KeptSale[]): readonly Sale[] {
  const known = new Set(kept.map(saleKey));
  return wanted.filter((sale) => {
    const key = saleKey(sale);
    const fresh = !known.has(key);
    known.add(key);
    return fresh;
  });
}

function saleKey({ sameModelAs: _, ...sale }: Sale): string {
  const { id: __, ...rest } = sale as Partial<KeptSale>;
  return rowKey(rest);
}

/** Behind every number in use, so that no id of a kept sale is given twice. */
function nextNumber(kept: readonly KeptSale[]): number {
  const numbers = kept.map(({ id }) => Number(/^sale-(\d+)$/.exec(id)?.[1] ?? 0));
  return numbers.reduce((most, one) => Math.max(most, one), 0) + 1;
}
