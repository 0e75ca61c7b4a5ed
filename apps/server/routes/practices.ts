import { openPractice, savePractice } from "#app/actions";
import {
  openPracticeContract,
  practicesContract,
  practiceWholeContract,
  problemsContract,
  type Store,
  saveContract,
  savedPracticeContract,
} from "#app/ports";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import { unread } from "../document-schemas.ts";
import { startDocuments } from "../start-documents.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const inPractice = z.object({ practice: z.string() });

export function practiceRoutes(server: ServerWithContracts, store: Store): void {
  server.get(
    "/api/practices",
    { schema: { summary: "All practices", response: { 200: practicesContract, default: problemsContract } } },
    async (_request, reply) => {
      const found = await store.practices();
      return found.ok ? { practices: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.post(
    "/api/practices",
    {
      schema: {
        summary: "Open a practice, empty or with the invented demo",
        body: openPracticeContract.extend({ document: unread("Practice").optional() }),
        response: { 200: practiceWholeContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const { action, id, start, document } = request.body;
      const done = await openPractice(store, { action, id, start: startDocuments(start, document) });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
  server.get(
    "/api/practices/:practice",
    {
      schema: {
        summary: "A practice with its halls and classes",
        params: inPractice,
        response: { 200: practiceWholeContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const found = await store.whole(request.params.practice);
      return found.ok ? found.value : answerProblems(reply, found.problems);
    },
  );
  server.put(
    "/api/practices/:practice",
    {
      schema: {
        summary: "Save what the whole practice shares",
        params: inPractice,
        body: saveContract.extend({ document: unread("Practice") }),
        response: { 200: savedPracticeContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await savePractice(store, { ...request.params, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
}
