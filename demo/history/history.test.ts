import { isBalanced } from "#core/books";
import type { SessionState } from "#core/roll";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import { thursdayHappened, tuesdayHappened } from "../marlsford-happened.ts";
import { marlsfordHistory } from "./marlsford-history.ts";

test("a year of invented history is done action by action, and the register says what the class sheets say", async () => {
  const record = await aRecorder();
  onTestFinished(() => record.close());
  const history = marlsfordHistory();
  const done = await Promise.all(
    history.map((it, number) => {
      record.at(it.at);
      return record.do(it.do, `history-${String(number).padStart(5, "0")}`);
    }),
  );
  const refused = done.flatMap((it, number) => (it.ok ? [] : [[history[number], it.problems]]));
  expect(refused).toEqual([]);
  for (const [id, { sessions }] of [
    ["tuesday-evening", tuesdayHappened],
    ["thursday-beginners", thursdayHappened],
  ] as const)
    for (const { date, heads } of sessions) {
      const state = await record.state<SessionState>(`session/${id}.${date}`);
      expect([date, state.places.filter((it) => it.state === "attended").length]).toEqual([date, heads]);
      expect(state.closed).toBe(true);
    }
  // 34 Saturdays, 11 Tuesdays and 10 Thursdays are over, 9 dates are ahead
  expect(history.filter(({ do: { kind } }) => kind === "close register")).toHaveLength(55);
  const lines = await record.postings();
  expect(isBalanced({ lines })).toBe(true);
  // Tithe Barn: 20 − 15 + 75 + 15 = 95 min, charged 120: 2 h × 14.00 = 28.00, with heating from October 2 × 3.00 more
  const hires = lines.filter(({ account, amount }) => account === "cost:hall" && amount > 0);
  expect(hires.filter(({ about }) => about === "session/tuesday-evening.2026-11-24")).toMatchObject([
    { amount: 3400 },
  ]);
  expect(hires).toHaveLength(55);
  // November is not invoiced yet: the rest is paid
  const due = lines.filter(({ account }) => account.startsWith("due:hall:"));
  const november = hires.filter(({ date }) => date.startsWith("2026-11"));
  expect(sumOf(due)).toBe(-sumOf(november));
});

test("the same history comes out every time", () => {
  expect(marlsfordHistory()).toEqual(marlsfordHistory());
});

function sumOf(lines: readonly { readonly amount: number }[]): number {
  return lines.reduce((sum, { amount }) => sum + amount, 0);
}
