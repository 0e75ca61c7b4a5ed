import { printHallSheet } from "#app/actions";
import { type Papers, problemsContract, type Store } from "#app/ports";
import { arrangements } from "#core/hall";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import { shownAs } from "../shown-as.ts";
import { todayIn } from "../today-in.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const theHall = z.object({ practice: z.string(), id: z.string() });

const asked = z.object({
  class: z.string().optional().describe("id of a class in this hall, for its own mats and caps"),
  paper: z.enum(["a4", "letter"]).optional().describe("Letter in the United States, else A4, unless told"),
  arrangement: z
    .enum(arrangements)
    .optional()
    .describe("how the mats stand; as the class or the hall has it unless told"),
});

export function paperRoutes(server: ServerWithContracts, store: Store, papers: Papers): void {
  server.get(
    "/api/practices/:practice/halls/:id/hall-sheet.pdf",
    {
      schema: {
        summary: "The hall sheet as a PDF, from what is saved",
        params: theHall,
        querystring: asked,
        response: {
          200: { description: "The PDF", content: { "application/pdf": { schema: z.any() } } },
          default: problemsContract,
        },
      },
    },
    async (request, reply) => {
      const { practice, id: hall } = request.params;
      const { class: forClass, paper: size, arrangement } = request.query;
      const done = await printHallSheet(store, papers, {
        practice,
        hall,
        forClass,
        size,
        arrangement,
        today: todayIn,
      });
      if (!done.ok) return answerProblems(reply, done.problems);
      return reply
        .type("application/pdf")
        .header("cache-control", "no-store")
        .header("content-disposition", shownAs(`Hall sheet ${done.value.called}.pdf`))
        .send(Buffer.from(done.value.pdf));
    },
  );
}
