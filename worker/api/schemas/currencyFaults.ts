/** What of a request bears on currency. */
export interface Priced {
  readonly currency?: string | undefined;
  readonly comparables?: readonly { readonly currency?: string | undefined }[] | undefined;
  readonly workshop?: { readonly priceLevel?: number | undefined } | undefined;
  /** What the tables count in. */
  readonly tables: string;
}

/** A field that is wrong, as a schema tells it. */
export interface CurrencyFault {
  readonly path: (string | number)[];
  readonly message: string;
}

/** Prices of two currencies are never mixed: which rate and which day is the user's to say. */
export function currencyFaults(priced: Priced): readonly CurrencyFault[] {
  const { currency, tables, comparables = [], workshop } = priced;
  const counted = currency ?? tables;
  const others = comparables.flatMap((one, index): CurrencyFault[] => {
    if (one.currency === undefined || one.currency === counted) return [];
    const message = `currency is ${one.currency}, and the request counts in ${counted}: convert the price at a rate of your choice and give it in ${counted}`;
    return [{ path: ["comparables", index, "currency"], message }];
  });
  if (counted === tables || comparables.length === 0 || workshop?.priceLevel !== undefined) return others;
  const message = `priceLevel is missing: comparables in ${counted} stand beside demo prices in ${tables}, so say how many ${counted} buy what 1 ${tables} buys`;
  return [...others, { path: ["workshop", "priceLevel"], message }];
}
