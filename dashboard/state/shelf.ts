/** The part of the browser's storage that is used here. */
export type Store = Pick<Storage, "getItem" | "setItem">;

/** What a shelf holds: a value, nothing, or something that cannot be read. */
export type Kept = { readonly value: unknown } | "nothing" | "unreadable";

/** Reads and writes JSON under one key; a browser that keeps nothing, or keeps nonsense, is no error. */
export interface Shelf {
  read(): Kept;
  /** Whether it was kept. */
  write(value: unknown): boolean;
}

export function shelf(store: Store | null, key: string): Shelf {
  return {
    read() {
      try {
        const text = store?.getItem(key) ?? null;
        return text === null ? "nothing" : { value: JSON.parse(text) as unknown };
      } catch {
        return "unreadable";
      }
    },
    write(value) {
      if (store === null) return false;
      try {
        store.setItem(key, JSON.stringify(value));
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** The browser's own storage; null where it is refused. */
export function browserStore(): Store | null {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}
