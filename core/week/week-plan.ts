import { z } from "zod";
import { weekDocumentSchema } from "./week-document.ts";

const {
  candidates,
  commitments,
  travel,
  travelCost,
  homeBetween,
  estimate,
  limits,
  wishes,
  weeks,
  target,
  guesses,
  places,
} = weekDocumentSchema.shape;

const ownSchema = z.object({
  class: z.string().describe("id of the class in the practice"),
  out: z.boolean().default(false).describe("left out of the week"),
  fixed: z.boolean().default(false).describe("promised already: it is in every week"),
  contribution: z
    .string()
    .optional()
    .describe("what a session leaves before travel, where it is not to be taken from the class sheet"),
  sessions: z
    .number()
    .optional()
    .describe("sessions a year, where they are not to be taken from the class sheet"),
});

const otherSchema = candidates.element.extend({
  out: z.boolean().default(false).describe("left out of the week for now"),
});

/**
 * What a practice keeps of its week: all of a week document that its classes, its currency and its zone do not tell.
 * A class of the practice comes in by itself; `own` holds only what she says about it here. A hall is a place under
 * its own id; one in `places` with the same id adds its point on the map.
 */
export const weekPlanSchema = z
  .object({
    format: z.literal("hallful/week-plan@1").optional(),
    home: z.string().default("home").describe("id of the place where each day begins and ends"),
    places: places.default([{ id: "home", name: "Home" }]),
    travel,
    travelCost,
    homeBetween,
    estimate,
    own: z.array(ownSchema).default([]),
    candidates: z
      .array(otherSchema)
      .default([])
      .describe("what could be taught beside the classes of the practice"),
    commitments,
    limits,
    wishes,
    weeks,
    target,
    guesses,
  })
  .describe("A week as a practice keeps it: places, ways, what else could be taught, limits and wishes.");

export type WeekPlan = z.output<typeof weekPlanSchema>;
