import { z } from "zod";
import { arrangements } from "./arrangement/arrangement-types.ts";
import { hireTermsSchema } from "./hire-terms-document.ts";

const metres = z.number().describe("metres");
const point = z.tuple([metres, metres]).describe("[x, y] in metres");
const outline = z.array(point).describe("corners in order, either way round, not closed");

const doorSwing = z
  .object({
    hinge: point,
    closed: point,
    open: point,
    wayOut: z
      .boolean()
      .optional()
      .describe("whether it is a way out in an emergency; taken for one unless stated or others are"),
  })
  .describe("a door leaf: the hinge, the free edge when shut, the free edge when open");

const placePart = z
  .object({ number: z.number(), part: z.enum(["bay", "way"]) })
  .describe(
    "of a place for a wheelchair or a chair: its number, and whether this is the place or its way out",
  );

/** The hall as it is written to a file: metres and degrees, y pointing up the page. */
export const hallDocumentSchema = z
  .object({
    format: z.literal("hallful/hall@1").optional(),
    name: z.string(),
    outline,
    fixtures: z.array(z.object({ label: z.string(), outline, movable: z.boolean().optional() })).default([]),
    keepClear: z
      .array(
        z.object({ label: z.string(), outline, door: doorSwing.optional(), place: placePart.optional() }),
      )
      .default([]),
    teacher: z.object({ outline }).nullable().default(null),
    mat: z.object({ length: metres, width: metres }),
    gaps: z
      .object({ side: metres, end: metres, wall: metres })
      .describe("side: between long sides; end: between short ends; wall: from walls and fixtures"),
    axis: z.union([z.number(), z.literal("auto")]).default("auto"),
    lengthAlong: z
      .number()
      .optional()
      .describe(
        "how the length of mats in lines has to lie, degrees from +x; whichever holds more unless stated",
      ),
    postedCapacity: z.number().optional().describe("the number of people on the hall's own notice"),
    peopleNotOnMats: z.number().optional().describe("teacher and helpers; 1 unless stated"),
    arrangement: z.enum(arrangements).optional().describe("how the mats stand; in lines unless stated"),
    middleWidth: metres
      .optional()
      .describe("how wide the clear middle between two banks is to be; 2 m unless stated"),
    ringCentre: point
      .optional()
      .describe("around where rings are to lie; the teacher's place or the most open point unless stated"),
    wayWidth: metres.optional().describe("how wide the ways to the doors are to be; 0.90 unless stated"),
    address: z.string().optional(),
    notes: z.string().optional(),
    currency: z.string().optional().describe("ISO 4217 code of the hire terms"),
    hire: hireTermsSchema.optional(),
  })
  .describe("A hall: its floor, what stands on it, the mat and the gaps, and what it charges.");

export type HallDocument = z.output<typeof hallDocumentSchema>;
export type HallDocumentInput = z.input<typeof hallDocumentSchema>;
