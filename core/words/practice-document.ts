import { z } from "zod";

/** One teacher's practice: what the whole of it shares. */
export const practiceDocumentSchema = z.object({
  name: z.string(),
  currency: z.string().describe("ISO 4217 code"),
  zone: z.string().describe("IANA zone of her halls, like Europe/London"),
  locale: z.enum(["en-GB", "en-US"]),
  units: z.enum(["metric", "feet"]),
});

export type PracticeDocument = z.output<typeof practiceDocumentSchema>;
