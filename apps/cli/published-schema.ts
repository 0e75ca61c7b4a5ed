import { classDocumentSchema } from "#core/class";
import { hallDocumentSchema } from "#core/hall";
import {
  demandDocumentSchema,
  happenedSchema,
  openingDocumentSchema,
  outlookDocumentSchema,
} from "#core/outlook";
import {
  compareDocumentSchema,
  eveningDocumentSchema,
  passDocumentSchema,
  priceDocumentSchema,
} from "#core/price";
import { weekDocumentSchema } from "#core/week";
import { practiceDocumentSchema } from "#core/words";
import { z } from "zod";
import { yearFileSchema } from "./year-document.ts";

const schemas: ReadonlyMap<string, z.ZodType> = new Map<string, z.ZodType>([
  ["hall", hallDocumentSchema],
  ["evening", eveningDocumentSchema],
  ["pass", passDocumentSchema],
  ["compare", compareDocumentSchema],
  ["price", priceDocumentSchema],
  ["opening", openingDocumentSchema],
  ["demand", demandDocumentSchema],
  ["happened", happenedSchema],
  ["outlook", outlookDocumentSchema],
  ["week", weekDocumentSchema],
  ["year", yearFileSchema],
  ["class", classDocumentSchema],
  ["practice", practiceDocumentSchema],
]);

export const schemaNames: readonly string[] = [...schemas.keys()];

/**
 * What may be written, by JSON Schema draft 2020-12: fields with a usual value may be left out, and fields
 * that Hallful does not know are allowed, since it tells of them instead. Undefined for an unknown name.
 */
export function publishedSchema(name: string): object | undefined {
  const schema = schemas.get(name);
  if (schema === undefined) return undefined;
  const { $schema, ...body } = z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" });
  return { $schema, $id: `urn:hallful:${name}:1`, title: `Hallful ${name}`, ...body };
}
