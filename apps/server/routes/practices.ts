import { openPractice, savePractice } from "#app/actions";
import { type Recorder, tellHistory } from "#app/record";
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
import { startDocuments, startHistory } from "../start-documents.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const inPractice = z.object({ practice: z.string() });

export function practiceRoutes(
  server: ServerWithContracts,
  store: Store,
  recorder: Omit<Recorder, "now">,
): void {
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
      const { action, id, start, history, document } = request.body;
      const done = await openPractice(store, { action, id, start: startDocuments(start, document) });
      if (!done.ok) return answerProblems(reply, done.problems);
      const { locale } = done.value.practice.document;
      const told = await tellHistory(recorder, {
        practice: id,
        locale,
        history: history ? startHistory(start) : [],
      });
      return told.ok ? done.value : answerProblems(reply, told.problems);
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
