import { planDocumentSchema } from "#app/ports";
import { classDocumentSchema } from "#core/class";
import { hallDocumentSchema } from "#core/hall";
import { happenedSchema } from "#core/outlook";
import { practiceDocumentSchema } from "#core/words";
import { z } from "zod";
import type { Tables } from "../tables.ts";

/** A table as it is moved: its columns in the order they are written, those that hold JSON, and its key. */
export type MovedTable = {
  readonly name: keyof Tables;
  readonly row: z.ZodObject;
  readonly json: readonly string[];
  readonly key: readonly string[];
};

const text = z.string();
const whole = z.int();
const json = z.unknown();
const kept = (document: z.ZodType) => z.strictObject({ practice: text, id: text, version: whole, document });

/** In an order in which each row finds the rows that it leans on. */
export const movedTables: readonly MovedTable[] = [
  {
    name: "practice",
    row: z.strictObject({ practice: text, version: whole, document: practiceDocumentSchema }),
    json: ["document"],
    key: ["practice"],
  },
  documents("hall", hallDocumentSchema),
  documents("class", classDocumentSchema),
  documents("happened", happenedSchema),
  documents("plan", planDocumentSchema),
  {
    name: "action",
    row: z.strictObject({ practice: text, action: text, what: text, answer: json, at: text }),
    json: ["answer"],
    key: ["practice", "action"],
  },
  {
    name: "stream",
    row: z.strictObject({
      practice: text,
      stream: text,
      kind: text,
      number: whole,
      belongs: text,
      sort: text,
      state: json,
    }),
    json: ["state"],
    key: ["practice", "stream"],
  },
  {
    name: "event",
    row: z.strictObject({
      practice: text,
      stream: text,
      number: whole,
      action: text,
      made: text,
      arrived: text,
      actor: text,
      body: json,
    }),
    json: ["body"],
    key: ["practice", "stream", "number"],
  },
  {
    name: "posting",
    row: z.strictObject({
      practice: text,
      action: text,
      line: whole,
      date: text,
      account: text,
      commodity: text,
      amount: whole,
      about: text,
    }),
    json: [],
    key: ["practice", "action", "line"],
  },
  {
    name: "sealed",
    row: z.strictObject({ practice: text, person: text, text }),
    json: [],
    key: ["practice", "person"],
  },
];

function documents(name: "hall" | "class" | "happened" | "plan", document: z.ZodType): MovedTable {
  return { name, row: kept(document), json: ["document"], key: ["practice", "id"] };
}
