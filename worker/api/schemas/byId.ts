import * as z from "zod";

/**
 * An object whose fields are some of the ids of a table. An id that is there has a value, which JSON makes certain and
 * the type says.
 * @param ids every id that may stand there
 * @param value what stands at each
 */
export function byId<Value extends z.ZodType>(ids: readonly string[], value: Value) {
  return z.partialRecord(z.enum(ids), value) as unknown as z.ZodRecord<z.ZodString, Value>;
}
