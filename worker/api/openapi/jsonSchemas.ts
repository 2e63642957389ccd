import * as z from "zod";

/** A JSON Schema as plain JSON. */
export type JsonSchema = Record<string, unknown>;

/** Where the document keeps a named schema. */
export function schemaUri(name: string): string {
  return `#/components/schemas/${name}`;
}

/**
 * The JSON Schemas (draft 2020-12) of named schemas, referring to one another by name.
 * @param named names by schema
 * @param io whether the schemas describe what comes in or what goes out
 */
export function jsonSchemas(
  named: ReadonlyMap<z.ZodType, string>,
  io: "input" | "output",
): Record<string, JsonSchema> {
  const registry = z.registry<{ id: string }>();
  for (const [schema, id] of named) registry.add(schema, { id });
  const { schemas } = z.toJSONSchema(registry, { uri: schemaUri, io, target: "draft-2020-12" });
  // A schema inside a document has that document's dialect and no address of its own.
  return Object.fromEntries(
    Object.entries(schemas).map(([id, { $schema: _, $id: __, ...schema }]) => [id, schema]),
  );
}
