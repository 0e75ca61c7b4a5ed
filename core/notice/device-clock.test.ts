import { expect, test } from "vitest";
import { deviceClock, madeAt } from "./device-clock.ts";

test("NOTICE-6 a clock two minutes out is let be; more is noticed", () => {
  const received = "2026-11-24T18:30:00Z";
  expect(deviceClock({ deviceSent: "2026-11-24T18:32:00Z", serverReceived: received })).toEqual({
    offsetSeconds: 120,
    off: false,
    sentence: "",
  });
  expect(deviceClock({ deviceSent: "2026-11-24T18:32:01Z", serverReceived: received }).off).toBe(true);
  expect(deviceClock({ deviceSent: "2026-11-24T17:29:30Z", serverReceived: received })).toMatchObject({
    offsetSeconds: -3630,
    off: true,
    sentence:
      "The clock of this device is 1 hour behind. The time was corrected by as much, so nobody is late or early because of it.",
  });
});

test("NOTICE-6 a time made on a clock an hour behind is put right by the hour", () => {
  const { made, byArrival } = madeAt({
    deviceMade: "2026-11-24T17:12:00Z",
    deviceSent: "2026-11-24T21:05:00Z",
    serverReceived: "2026-11-24T22:05:00Z",
  });
  expect({ made, byArrival }).toEqual({ made: "2026-11-24T18:12:00Z", byArrival: false });
});

test("NOTICE-6 nothing was made after it arrived, even on a clock a minute ahead", () => {
  const times = { deviceSent: "2026-11-24T18:31:00Z", serverReceived: "2026-11-24T18:30:00Z" };
  expect(madeAt({ ...times, deviceMade: "2026-11-24T18:30:50Z" }).made).toBe("2026-11-24T18:30:00Z");
});

test("NOTICE-6 made after it was sent cannot be: arrival counts, and it is said", () => {
  const found = madeAt({
    deviceMade: "2026-11-24T19:00:00Z",
    deviceSent: "2026-11-24T18:00:00Z",
    serverReceived: "2026-11-24T18:00:02Z",
  });
  expect(found).toMatchObject({ made: "2026-11-24T18:00:02Z", byArrival: true });
  expect(found.sentence).toContain("decide kindly");
});
