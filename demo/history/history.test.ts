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
  expect(isBalanced({ lines: await record.postings() })).toBe(true);
});

test("the same history comes out every time", () => {
  expect(marlsfordHistory()).toEqual(marlsfordHistory());
});
