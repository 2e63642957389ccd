import { useRef, useState } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import { localDay } from "./days.ts";
import { type Draft, emptyDraft, saleOf } from "./draft.ts";
import type { Sale } from "./sale.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** A sale that is being entered by hand. */
export type SaleEntry = ReturnType<typeof useSaleEntry>;

/**
 * Holds what is typed of a sale, reads it like a row of a file, and keeps it with the others.
 * @param complete adds what the form itself knows, before the sale is kept
 */
export function useSaleEntry(
  vocabulary: Vocabulary,
  currency: string,
  complete: (sale: Sale) => Sale = (sale) => sale,
) {
  const today = localDay(new Date());
  const [draft, setDraft] = useState<Draft>(emptyDraft(today));
  const [wrong, setWrong] = useState<Readonly<Record<string, string>>>({});
  const [said, setSaid] = useState("");
  const form = useRef<HTMLFormElement>(null);

  function put(column: string, cell: string | undefined): void {
    setDraft({ ...draft, [column]: cell ?? "" });
    setWrong({ ...wrong, [column]: "" });
    setSaid("");
  }

  /** Whether it was added; else the first field at fault has the focus, or a line says why. */
  function add(): boolean {
    const read = saleOf(draft, vocabulary, today, currency);
    if ("wrong" in read) {
      setWrong(read.wrong);
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
      return false;
    }
    const { added, over } = ownPrices.addSales([complete(read.sale)]);
    if (added === 0) {
      setSaid(
        over > 0 ? "Not added: there is room for 5,000 sales." : "Not added: the same sale is kept already.",
      );
      return false;
    }
    setDraft(emptyDraft(draft.date ?? today));
    setSaid("Added.");
    return true;
  }

  return {
    today,
    said,
    form,
    put,
    add,
    cell: (column: string) => (draft[column] ? draft[column] : undefined),
    messages: (column: string) => (wrong[column] ? [wrong[column]] : []),
  };
}
