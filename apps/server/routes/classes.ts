import { removeClass, saveClass, saveHappened } from "#app/actions";
import {
  problemsContract,
  removeContract,
  removedContract,
  type Store,
  saveContract,
  savedClassContract,
  savedHappenedContract,
} from "#app/ports";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import { unread } from "../document-schemas.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const theClass = z.object({ practice: z.string(), id: z.string() });

export function classRoutes(server: ServerWithContracts, store: Store): void {
  server.put(
    "/api/practices/:practice/classes/:id",
    {
      schema: {
        summary: "Save a class",
        params: theClass,
        body: saveContract.extend({ document: unread("Class") }),
        response: { 200: savedClassContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await saveClass(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
  server.put(
    "/api/practices/:practice/classes/:id/happened",
    {
      schema: {
        summary: "Save what really happened in a class",
        params: theClass,
        body: saveContract.extend({ document: unread("Happened") }),
        response: { 200: savedHappenedContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await saveHappened(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
  server.delete(
    "/api/practices/:practice/classes/:id",
    {
      schema: {
        summary: "Remove a class",
        params: theClass,
        body: removeContract,
        response: { 200: removedContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await removeClass(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
}
