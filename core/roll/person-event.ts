import { z } from "zod";

export const consentKinds = ["news", "photo", "hands-on", "health"] as const;

const contact = z.object({
  name: z.string(),
  phone: z.string().default(""),
  email: z.string().default(""),
  emergencyName: z.string().default("").describe("whom to ring when something happens"),
  emergencyPhone: z.string().default(""),
  heard: z.string().default("").describe("how this person heard of the classes"),
});

/** Everything that can happen to what is known of one person. No event tells what somebody's health is. */
export const personEventSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("met"), contact }),
  z.object({ kind: z.literal("contact changed"), contact }),
  z.object({
    kind: z.literal("consented"),
    to: z.enum(consentKinds),
    given: z.boolean().describe("false: taken back, or said no"),
    wording: z.string().describe("the words that were agreed to"),
  }),
  z
    .object({ kind: z.literal("health form"), speak: z.boolean(), reviewBy: z.string() })
    .describe("a form was filled in; speak: a dot on the register, to speak with the teacher first"),
  z.object({ kind: z.literal("health form removed") }),
  z.object({ kind: z.literal("gave up late"), session: z.string(), waived: z.boolean() }),
  z
    .object({
      kind: z.literal("may cover"),
      insuredUntil: z.string().nullable().describe("ISO date of the certificate seen; null: none seen"),
      styles: z.string(),
      fee: z.int().min(0).describe("whole minor units, usual fee"),
    })
    .describe("a teacher who may be asked to take a class"),
  z.object({ kind: z.literal("erased") }),
]);

export type PersonEvent = z.output<typeof personEventSchema>;
export type Contact = z.output<typeof contact>;
export type ConsentKind = (typeof consentKinds)[number];

/** Contact as it comes from a form or a door, before it is looked over. */
export const contactSchema = contact;
