import { noticeSchema } from "#core/roll";
import { good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { idSchema, instantSchema, isoDateSchema } from "./ask-parts.ts";

const ask = z
  .object({
    kind: z.literal("open sessions"),
    class: idSchema,
    name: z.string(),
    sessions: z.array(z.object({ id: idSchema, date: isoDateSchema, starts: instantSchema })).max(400),
    zone: z.string(),
    minutes: z.int().min(1),
    hall: idSchema.nullable(),
    capacity: z.int().min(0).max(10_000),
    posted: z.int().min(0).nullable(),
    currency: z.string().length(3),
    single: z.int().min(0),
    concession: z.int().min(0),
    notice: noticeSchema,
    firstLateWaived: z.boolean(),
  })
  .describe("The dates of a class are put into the record; those that are there stay as they are.");

export const openSessions = doing({
  ask,
  needs: ({ sessions }) => sessions.map(({ id }) => `session/${id}` as const),
  decide: (asked, desk) => {
    const { kind: _, sessions, ...same } = asked;
    const fresh = sessions.filter(({ id }) => desk.session(id) === undefined);
    for (const { id, date, starts } of fresh) desk.tellSession(id, { kind: "opened", ...same, date, starts });
    const known = sessions.length - fresh.length;
    const there =
      known === 0 ? "" : ` ${known} ${known === 1 ? "was" : "were"} there before and stay as they are.`;
    return good({ says: [`${fresh.length} dates of ${same.name} are in the record.${there}`] });
  },
});
