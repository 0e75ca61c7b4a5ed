import { type ClassDocument, classDocumentSchema } from "#core/class";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { type HappenedDocument, happenedSchema } from "#core/outlook";
import { type PracticeDocument, practiceDocumentSchema } from "#core/words";
import { z } from "zod";
import { type PlanDocument, planDocumentSchema } from "./plan.ts";

/**
 * What the server and whoever asks it agree on. A document comes in unread ("unknown"), because the core
 * reads it and its problems are the ones to show; the shape is told by the published schemas.
 */
const id = z.string().describe("small letters, digits and hyphens, like tithe-barn");
const action = z.string().describe("an id made by whoever asks; the same action twice is done once");
const from = z.number().int().min(0).describe("the version this was made from, 0 for a new one");
const version = z.number().int().min(1).describe("counts the saves from 1");
const unused = z.array(z.string()).readonly().describe("places in the document that Hallful does not know");

export const problemsContract = z.object({
  problems: z
    .array(z.object({ code: z.string(), place: z.string(), says: z.string(), next: z.string() }))
    .readonly(),
});
export type ProblemsAnswer = z.output<typeof problemsContract>;

const keptPractice = z.object({ id, version, document: practiceDocumentSchema });
const keptHall = z.object({ id, version, document: hallDocumentSchema });
const keptClass = z.object({ id, version, document: classDocumentSchema });
const keptHappened = z.object({ id, version, document: happenedSchema });
const keptPlan = z.object({ id, version, document: planDocumentSchema });

/** GET /api/practices */
export const practicesContract = z.object({ practices: z.array(keptPractice).readonly() });
export type PracticesAnswer = z.output<typeof practicesContract>;

/** GET /api/practices/:practice, and the answer to POST /api/practices */
export const practiceWholeContract = z.object({
  practice: keptPractice,
  halls: z.array(keptHall).readonly(),
  classes: z.array(keptClass).readonly(),
  happened: z.array(keptHappened).readonly().describe("by the id of the class"),
  plans: z.array(keptPlan).readonly().describe("of the practice as a whole: week, year, money"),
});
export type PracticeWholeAnswer = z.output<typeof practiceWholeContract>;

export const startContract = z.enum(["empty", "demo-marlsford", "demo-cedar-fork"]);
export type PracticeStart = z.output<typeof startContract>;

/** POST /api/practices. The document may be left out: a demo brings its own, an empty one starts in GBP. */
export const openPracticeContract = z.object({
  action,
  id,
  start: startContract,
  history: z.boolean().default(false).describe("a demo's year of invented evenings, done action by action"),
  document: z.unknown().optional(),
});
export type OpenPracticeAsk = {
  readonly action: string;
  readonly id: string;
  readonly start: PracticeStart;
  readonly history?: boolean;
  readonly document?: PracticeDocument;
};

/** PUT of a practice, a hall, a class, what happened in it, or a plan */
export const saveContract = z.object({ action, from, document: z.unknown() });
export type SaveAsk<Document> = {
  readonly action: string;
  readonly from: number;
  readonly document: Document;
};

/** DELETE of a hall or a class */
export const removeContract = z.object({ action, from });
export type RemoveAsk = z.output<typeof removeContract>;

export const savedPracticeContract = keptPractice.extend({ unused });
export const savedHallContract = keptHall.extend({ unused });
export const savedClassContract = keptClass.extend({ unused });
export const savedHappenedContract = keptHappened.extend({ unused });
export const savedPlanContract = keptPlan.extend({ unused });
export const removedContract = z.object({ removed: id });

/** A save answers the document as it was stored, with what was left out of it. */
export type Saved<
  Document extends PracticeDocument | HallDocument | ClassDocument | HappenedDocument | PlanDocument,
> = {
  readonly id: string;
  readonly version: number;
  readonly document: Document;
  readonly unused: readonly string[];
};

/** GET /api/health */
export const healthContract = z.object({ status: z.literal("ready"), version: z.string() });
