import { type ReadonlySignal, signal } from "@preact/signals";
import { NEEDED } from "../answers/answers.ts";
import { isRecord } from "../answers/parsed.ts";
import type { AttributeName, WholeState } from "../api/types.ts";
import type { Shelf } from "../state/shelf.ts";

/** The states in which a bicycle is sold whole. */
export const WHOLE_STATES = ["asFound", "madeSafe", "restored"] as const satisfies readonly WholeState[];

/** What holds for everything the seller sells. Absent: the service's own figure. */
export interface SellerTerms {
  /** Weeks after which it goes in any case. */
  readonly weeks?: number;
  /** Money a week of keeping it costs. */
  readonly storagePerWeek?: number;
  /** Share that a buyer talks off, 0 to 1. */
  readonly haggling?: number;
  /** Month it is put up for sale, 1 to 12. */
  readonly month?: number;
}

/** What holds for one bicycle. Absent: the service's own figure. */
export interface BikeTerms {
  readonly state?: WholeState;
  /** Buyers who look at it in a week. */
  readonly arrivalsPerWeek?: number;
  /** Money it brings where it has not sold in time. */
  readonly fallback?: number;
}

/** What is known of a bicycle that is none of the finds. */
export type AloneAnswers = Partial<Readonly<Record<AttributeName, string>>>;

export interface SellingKept {
  readonly seller: SellerTerms;
  /** By id of the find. */
  readonly bikes: Readonly<Record<string, BikeTerms>>;
  readonly alone: AloneAnswers;
}

export const NOTHING_KEPT: SellingKept = { seller: {}, bikes: {}, alone: {} };

/** The terms of selling, kept in the browser. */
export interface SellingTerms {
  readonly kept: ReadonlySignal<SellingKept>;
  /** Undefined takes a term back. */
  putSeller<K extends keyof SellerTerms>(key: K, value: SellerTerms[K] | undefined): void;
  putBike<K extends keyof BikeTerms>(id: string, key: K, value: BikeTerms[K] | undefined): void;
  putAlone(name: AttributeName, value: string | undefined): void;
}

/**
 * Opens the shelf. What cannot be read is as at first.
 * @param known ids of the finds there are: with the next change the terms of others are dropped
 */
export function openSellingTerms(place: Shelf, known: () => readonly string[]): SellingTerms {
  const found = place.read();
  const kept = signal(keptIn(typeof found === "object" ? found.value : undefined));
  const put = (change: Partial<SellingKept>) => {
    kept.value = { ...kept.value, ...change };
    place.write(kept.value);
  };
  return {
    kept,
    putSeller: (key, value) => put({ seller: withField(kept.value.seller, key, value) }),
    putBike(id, key, value) {
      const { bikes } = kept.value;
      const there = new Set(known());
      const others = Object.entries(bikes).filter(([bike]) => there.has(bike));
      put({ bikes: { ...Object.fromEntries(others), [id]: withField(bikes[id] ?? {}, key, value) } });
    },
    putAlone: (name, value) => put({ alone: withField(kept.value.alone, name, value) }),
  };
}

function withField<T extends object, K extends keyof T>(terms: T, key: K, value: T[K] | undefined): T {
  const { [key]: _, ...rest } = terms;
  return (value === undefined ? rest : { ...rest, [key]: value }) as T;
}

function keptIn(value: unknown): SellingKept {
  if (!isRecord(value)) return NOTHING_KEPT;
  const seller = numbersIn(value.seller, ["weeks", "storagePerWeek", "haggling", "month"]);
  const bikes = isRecord(value.bikes) ? Object.entries(value.bikes) : [];
  return {
    seller,
    bikes: Object.fromEntries(bikes.map(([id, terms]) => [id, bikeIn(terms)])),
    alone: wordsIn(value.alone),
  };
}

function bikeIn(value: unknown): BikeTerms {
  if (!isRecord(value)) return {};
  const { state } = value;
  return {
    ...numbersIn(value, ["arrivalsPerWeek", "fallback"]),
    ...(WHOLE_STATES.some((one) => one === state) ? { state: state as WholeState } : {}),
  };
}

/** The finite numbers among the named fields. */
function numbersIn<K extends string>(value: unknown, names: readonly K[]): { [name in K]?: number } {
  if (!isRecord(value)) return {};
  const found = names.filter((name) => typeof value[name] === "number" && Number.isFinite(value[name]));
  return Object.fromEntries(found.map((name) => [name, value[name]])) as { [name in K]?: number };
}

function wordsIn(value: unknown): AloneAnswers {
  if (!isRecord(value)) return {};
  const found = NEEDED.filter((name) => typeof value[name] === "string");
  return Object.fromEntries(found.map((name) => [name, value[name]])) as AloneAnswers;
}
