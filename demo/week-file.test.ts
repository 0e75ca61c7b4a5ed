import { readFileSync } from "node:fs";
import { join } from "node:path";
import { weekAnswer, type WeekDocument } from "#core/week";
import { loadSolver } from "#kernels/search";
import { expect, it } from "vitest";
import { marlsford } from "./marlsford.ts";

const text = readFileSync(join(import.meta.dirname, "files", "oriels-week.json"), "utf8");
const week: Pick<WeekDocument, "candidates" | "travel"> = JSON.parse(text);

it("has a week that is answered with proof, and nothing in it that nobody reads", async () => {
  const answer = weekAnswer(week, await loadSolver());
  expect(answer).toMatchObject({ ok: true, value: { unused: [], json: { proven: true } } });
});

type Named = { readonly id: string };
const byId = (one: Named, other: Named) => one.id.localeCompare(other.id);

it("has in its week the classes of the demo, at their times", () => {
  const own = week.candidates.filter(({ kind }) => kind === "own");
  const told = own.map(({ id, weekday, start, minutes }) => ({ id, weekday, start, minutes }));
  const classes = marlsford.classes.map(({ id, document }) => {
    const { setUp, class: teach, packDown, preparation } = document.minutes;
    const minutes = { before: setUp, teach, after: packDown, preparation };
    return { id, weekday: document.weekday, start: document.start, minutes };
  });
  expect(told.toSorted(byId)).toEqual(classes.toSorted(byId));
});
