// Not through the package's own name, whose namespace of these classes would bring every language's messages along.
import {
  $ZodArray,
  $ZodDefault,
  $ZodEnum,
  $ZodLazy,
  $ZodNullable,
  $ZodObject,
  $ZodOptional,
  $ZodPipe,
  $ZodPrefault,
  $ZodReadonly,
  $ZodRecord,
  type $ZodType,
  $ZodUnion,
} from "zod/v4/core";

/**
 * The names of the fields a schema knows at a place in its document, in the schema's order; empty where that place
 * is no object of fixed fields or names.
 * @param schema the schema of the whole document
 * @param path the steps from the root: member names and array positions
 */
export function fieldsAt(schema: $ZodType, path: readonly PropertyKey[]): string[] {
  const places = path.reduce<$ZodType[]>((at, step) => at.flatMap((one) => under(one, step)), [schema]);
  return [...new Set(places.flatMap(forms).flatMap(namesOf))];
}

/** The fields an object knows, the names a record takes where they are a list. */
function namesOf(form: $ZodType): string[] {
  if (isObject(form)) return Object.keys(form._zod.def.shape);
  if (!(form instanceof $ZodRecord)) return [];
  const { keyType } = form._zod.def;
  return keyType instanceof $ZodEnum ? Object.values(keyType._zod.def.entries).map(String) : [];
}

/** The schemas of one member of a schema's values. */
function under(schema: $ZodType, step: PropertyKey): $ZodType[] {
  return forms(schema).flatMap((form) => {
    if (isObject(form)) {
      const member = Object.hasOwn(form._zod.def.shape, step) ? form._zod.def.shape[String(step)] : undefined;
      return member === undefined ? [] : [member];
    }
    if (form instanceof $ZodArray) return [form._zod.def.element];
    if (form instanceof $ZodRecord) return [form._zod.def.valueType];
    return [];
  });
}

/** A schema without its wrappings (optional, nullable, default, transform), one entry for each form of a union. */
function forms(schema: $ZodType): $ZodType[] {
  if (schema instanceof $ZodUnion) return schema._zod.def.options.flatMap(forms);
  if (schema instanceof $ZodPipe) return forms(schema._zod.def.in);
  if (schema instanceof $ZodLazy) return forms(schema._zod.def.getter());
  if (
    schema instanceof $ZodOptional ||
    schema instanceof $ZodNullable ||
    schema instanceof $ZodDefault ||
    schema instanceof $ZodPrefault ||
    schema instanceof $ZodReadonly
  ) {
    return forms(schema._zod.def.innerType);
  }
  return [schema];
}

function isObject(schema: $ZodType): schema is $ZodObject {
  return schema instanceof $ZodObject;
}
