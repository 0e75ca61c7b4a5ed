import { savePlan } from "#app/actions";
import { problemsContract, type Store, saveContract, savedPlanContract } from "#app/ports";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

export function planRoutes(server: ServerWithContracts, store: Store): void {
  server.put(
    "/api/practices/:practice/plans/:id",
    {
      schema: {
        summary: "Save what the practice plans as a whole: its week, its year or its money",
        params: z.object({ practice: z.string(), id: z.string().describe("week, year or money") }),
        body: saveContract,
        response: { 200: savedPlanContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await savePlan(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
}
