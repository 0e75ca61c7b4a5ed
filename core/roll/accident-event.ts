import { z } from "zod";

/** What is written down when somebody is hurt. It is locked once it is kept: more can be added, nothing changed. */
export const accidentFactsSchema = z.object({
  session: z.string().nullable(),
  person: z.string().describe("name as it was given"),
  contact: z.string(),
  ageBand: z.enum(["under 16", "16 to 17", "18 to 64", "65 and over", "not known"]),
  at: z.string().describe("ISO 8601 instant, UTC"),
  place: z.string(),
  activity: z.string().describe("what was being taught, and how it was told"),
  happened: z.string().describe("facts only"),
  injury: z.string(),
  firstAid: z.string(),
  by: z.string().describe("who gave first aid"),
  ambulance: z.boolean(),
  witnesses: z.string(),
  premises: z.string().describe("what the hall or the kit had to do with it; empty: nothing"),
  told: z.string().describe("who was told: hall, insurer, emergency contact"),
});

export const accidentEventSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("written"), facts: accidentFactsSchema }),
  z.object({ kind: z.literal("added"), text: z.string() }),
]);

export type AccidentFacts = z.output<typeof accidentFactsSchema>;
export type AccidentEvent = z.output<typeof accidentEventSchema>;

export type AccidentState = {
  readonly facts: AccidentFacts;
  readonly added: readonly { readonly text: string; readonly at: string }[];
};

/** The accident record after one more event, made at an ISO instant; the facts are never written twice. */
export function applyAccident(
  before: AccidentState | null,
  event: AccidentEvent,
  made: string,
): AccidentState {
  if (event.kind === "written") {
    if (before !== null) throw new Error("an accident record is locked once it is written");
    return { facts: event.facts, added: [] };
  }
  if (before === null) throw new Error("there is no accident record to add to");
  return { ...before, added: [...before.added, { text: event.text, at: made }] };
}
