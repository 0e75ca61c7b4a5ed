import { classDocumentSchema } from "#core/class";
import { hallDocumentSchema } from "#core/hall";
import { happenedSchema } from "#core/outlook";
import { practiceDocumentSchema } from "#core/words";
import { z } from "zod";

const schemas = {
  Hall: hallDocumentSchema,
  Class: classDocumentSchema,
  Happened: happenedSchema,
  Practice: practiceDocumentSchema,
} as const;

/** The documents as the description of the server has them, under #/components/schemas. */
export function documentSchemas(): Readonly<Record<string, object>> {
  const written = Object.entries(schemas).map(([name, schema]) => {
    return [name, z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" })] as const;
  });
  return Object.fromEntries(written);
}

/** A document that comes in unread: described by its schema, and read by the core, whose problems are shown. */
export function unread(name: keyof typeof schemas) {
  return z.unknown().meta({ $ref: `#/components/schemas/${name}` });
}
