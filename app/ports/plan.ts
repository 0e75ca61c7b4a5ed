import { z } from "zod";

/** What a practice plans for itself as a whole, each under its own id: the week, the year, the money. */
export const planIds = ["week", "year", "money"] as const;
export type PlanId = (typeof planIds)[number];

/** A plan is kept as it was read; each id has a reader of its own, and what a later version added is left to it. */
export const planDocumentSchema = z.record(z.string(), z.unknown());
export type PlanDocument = Readonly<Record<string, unknown>>;
