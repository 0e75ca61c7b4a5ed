import {
  actContract,
  balancesContract,
  noteContract,
  personExportContract,
  postingsContract,
  problemsContract,
  type RecordStore,
  type Sealer,
  seenContract,
  streamsContract,
  toldContract,
} from "#app/ports";
import { act, exportPerson, readAll, readEvenings, readSeen, type Recorder } from "#app/record";
import { good, type Result } from "#core/words";
import { z } from "zod";
import { answerProblems } from "../answer-problems.ts";
import type { ServerWithContracts } from "./server-with-contracts.ts";

const inPractice = z.object({ practice: z.string() });
const ofPerson = inPractice.extend({ person: z.string() });
const stretch = z.object({
  from: z.string().describe("ISO 8601 instant, UTC"),
  until: z.string().describe("ISO 8601 instant, UTC, not included"),
  class: z.string().optional(),
});
const days = z.object({
  from: z.string().describe("ISO date"),
  until: z.string().describe("ISO date, included"),
});
const streams = { 200: streamsContract, default: problemsContract };

export type RecordParts = { readonly recorder: Recorder; readonly sealer: Sealer };

/** The running record: one way in for everything that is done, and what its screens read. */
export function recordRoutes(server: ServerWithContracts, { recorder, sealer }: RecordParts): void {
  const record = recorder.store;
  server.post(
    "/api/practices/:practice/record",
    {
      schema: {
        summary: "Do something with people, places or passes; the same action twice is done once",
        params: inPractice,
        body: actContract,
        response: { 200: toldContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const done = await act(recorder, { practice: request.params.practice, ...request.body });
      return done.ok ? done.value : answerProblems(reply, done.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/evenings",
    {
      schema: {
        summary: "Sessions of a stretch of time, with everybody and every pass in them",
        params: inPractice,
        querystring: stretch,
        response: streams,
      },
    },
    async (request, reply) => {
      const found = await readEvenings(record, { ...request.params, ...request.query });
      return found.ok ? { streams: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/people",
    { schema: { summary: "Everybody in the record", params: inPractice, response: streams } },
    async (request, reply) => {
      const found = await readAll(record, request.params.practice, "person");
      return found.ok ? { streams: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/people/seen",
    {
      schema: {
        summary: "When each was last at a session of a stretch of time, and how often",
        params: inPractice,
        querystring: stretch,
        response: { 200: seenContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const found = await readSeen(record, { ...request.params, ...request.query });
      return found.ok ? { seen: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/people/:person/export",
    {
      schema: {
        summary: "Everything that is kept about one person, to be handed over",
        params: ofPerson,
        querystring: z.object({
          note: z
            .enum(["closed", "opened"])
            .default("closed")
            .describe("whether the note about health is in it"),
        }),
        response: { 200: personExportContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const { practice, person } = request.params;
      const openNote =
        request.query.note === "opened" ? (text: string) => sealer.open(practice, person, text) : null;
      const found = await exportPerson(record, { practice, person, now: recorder.now(), openNote });
      if (!found.ok) return answerProblems(reply, found.problems);
      return reply.header("cache-control", "no-store").send(found.value);
    },
  );
  server.get(
    "/api/practices/:practice/record/passes",
    {
      schema: {
        summary: "All passes, or those of one person",
        params: inPractice,
        querystring: z.object({ holder: z.string().optional() }),
        response: streams,
      },
    },
    async (request, reply) => {
      const found = await readAll(record, request.params.practice, "pass", request.query.holder);
      return found.ok ? { streams: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/accidents",
    { schema: { summary: "All accident records", params: inPractice, response: streams } },
    async (request, reply) => {
      const found = await readAll(record, request.params.practice, "accident");
      return found.ok ? { streams: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/postings",
    {
      schema: {
        summary: "The lines of the books from one day to another",
        params: inPractice,
        querystring: days,
        response: { 200: postingsContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const found = await record.postings(request.params.practice, request.query);
      return found.ok ? { postings: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/balances",
    {
      schema: {
        summary: "What lies in each account of the books at the end of a day",
        params: inPractice,
        querystring: z.object({ until: z.string().describe("ISO date, included") }),
        response: { 200: balancesContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const found = await record.balances(request.params.practice, request.query.until);
      return found.ok ? { balances: found.value } : answerProblems(reply, found.problems);
    },
  );
  server.get(
    "/api/practices/:practice/record/people/:person/note",
    {
      schema: {
        summary: "The note about one person's health, opened for the teacher; kept nowhere on the way",
        params: ofPerson,
        response: { 200: noteContract, default: problemsContract },
      },
    },
    async (request, reply) => {
      const { practice, person } = request.params;
      const note = await openNote(record, sealer, practice, person);
      if (!note.ok) return answerProblems(reply, note.problems);
      return reply.header("cache-control", "no-store").send({ note: note.value });
    },
  );
}

async function openNote(
  record: RecordStore,
  sealer: Sealer,
  practice: string,
  person: string,
): Promise<Result<string | null>> {
  const sealed = await record.sealed(practice, person);
  if (!sealed.ok || sealed.value === null) return sealed;
  const opened = sealer.open(practice, person, sealed.value);
  return opened.ok ? good(opened.value) : opened;
}
