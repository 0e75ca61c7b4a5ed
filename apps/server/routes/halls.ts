import { removeHall, saveHall } from "#app/actions";
import {
  problemsContract,
  removeContract,
  removedContract,
  type Store,
  saveContract,
  savedHallContract,
} from "#app/ports";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import { unread } from "../document-schemas.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const theHall = z.object({ practice: z.string(), id: z.string() });

export function hallRoutes(server: ServerWithContracts, store: Store): void {
  server.put(
    "/api/practices/:practice/halls/:id",
    {
      schema: {
        summary: "Save a hall",
        params: theHall,
        body: saveContract.extend({ document: unread("Hall") }),
        response: { 200: savedHallContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await saveHall(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
  server.delete(
    "/api/practices/:practice/halls/:id",
    {
      schema: {
        summary: "Remove a hall",
        params: theHall,
        body: removeContract,
        response: { 200: removedContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await removeHall(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
}
