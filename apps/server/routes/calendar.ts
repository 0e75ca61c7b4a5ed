import { writeCalendarFile } from "#adapters/calendar";
import { calendarFeed } from "#app/actions";
import { problemsContract, type Store } from "#app/ports";
import { Temporal } from "temporal-polyfill";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import { todayIn } from "../today-in.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

/** The address that a calendar program follows: it asks again and again, and knows nothing but the secret in it. */
export function calendarRoute(server: ServerWithContracts, store: Store, now: () => string): void {
  server.get(
    "/calendar/:file",
    {
      schema: {
        summary: "The sessions of a year for a calendar program, by the secret in the address",
        params: z.object({ file: z.string().describe("the secret, and .ics behind it") }),
        response: {
          200: { description: "An iCalendar file", content: { "text/calendar": { schema: z.any() } } },
          default: problemsContract,
        },
      },
    },
    async (request, reply) => {
      const done = await calendarFeed(store, request.params.file.replace(/\.ics$/, ""), todayIn);
      if (!done.ok) return answerProblems(reply, done.problems);
      const { name, entries } = done.value;
      return reply
        .type("text/calendar; charset=utf-8")
        .header("cache-control", "no-store")
        .send(Buffer.from(writeCalendarFile(entries, { name, made: Temporal.Instant.from(now()) })));
    },
  );
}
