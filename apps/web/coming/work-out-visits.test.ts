import { expect, test } from "vitest";
import type { VisitsStage } from "./visits-job.ts";
import { workOutVisits } from "./work-out-visits.ts";

const ask = { columns: {}, order: null, names: "look" } as const;
const renewal = { period: "month", goneAfter: 1 } as const;

function answerTo(text: string) {
  const told: VisitsStage["doing"][] = [];
  const bytes = new TextEncoder().encode(text);
  const answer = workOutVisits({ bytes, ask, choices: {}, renewal }, ({ doing }) => told.push(doing));
  return { answer, told };
}

test("what is being done is told in its order", () => {
  const { answer, told } = answerTo("Name,Date\nNell,2026-09-08\nOwen,2026-09-08\nNell,2026-09-15\n");
  expect(told).toEqual(["reading", "sorting", "working out"]);
  expect(answer).toMatchObject({ kind: "ready", visits: 3, left: [] });
});

test("a list without dates asks which column has them, and one whose rows are no use says so", () => {
  expect(answerTo("Name,Town\nNell,Marlsford\n").answer).toMatchObject({
    kind: "asks",
    problems: [{ code: "column-unclear" }],
  });
  expect(answerTo("Name,Date\n,2026-09-08\n,2026-09-15\n").answer.kind).not.toBe("ready");
  expect(answerTo("").answer).toMatchObject({ kind: "no table", problems: [{ code: "table-empty" }] });
});

test("a closure that is the wrong way round is told, with how the file was read", () => {
  const bytes = new TextEncoder().encode("Name,Date\nNell,2026-09-08\n");
  const closed = [{ from: "2026-10-31", until: "2026-10-25" }];
  expect(workOutVisits({ bytes, ask, choices: { closed }, renewal }, () => undefined)).toMatchObject({
    kind: "not worked out",
    problems: [{ code: "closure-backwards" }],
    visits: 1,
  });
});

test("renewals are told by the month; where nobody was watched for so long that is said and the rest stands", () => {
  const rows = ["2026-09-08", "2026-10-06", "2026-11-24"].map((date) => `Nell,${date}`);
  // Owen came in September alone, and October without him was over
  const { answer } = answerTo(`Name,Date\n${rows.join("\n")}\nOwen,2026-09-15\n`);
  if (answer.kind !== "ready" || answer.renewals.kind !== "ready") throw new Error(answer.kind);
  const { people, sentences } = answer.renewals.answer;
  expect(people.map(({ person, stayed, stillThere }) => [person, stayed, stillThere])).toEqual([
    ["Nell", 2, true],
    ["Owen", 0, false],
  ]);
  expect(sentences[0]).toMatch(/^Of 2 who began, still coming: 50 %/);
  const short = answerTo("Name,Date\nNell,2026-09-08\nOwen,2026-09-15\n").answer;
  expect(short).toMatchObject({
    kind: "ready",
    renewals: { kind: "not worked out", problems: [{ code: "stays-too-short" }] },
  });
});
