/**
 * A value made at its first use and kept from then on: what an isolate needs only once it is asked.
 * @param make makes the value; what it throws is thrown again at every use, for nothing is kept
 */
export function once<Value>(make: () => Value): () => Value {
  let kept: { readonly value: Value } | undefined;
  return () => {
    kept ??= { value: make() };
    return kept.value;
  };
}
