// RFC 5545, September 2009, 3.3.6 "DURATION": days are nominal, hours, minutes and seconds are exact, so that over a
// change of the clocks PT24H and P1D end apart. The changes themselves are those of the IANA time zone
// database (files europe and northamerica, rules EU and US); the local times are worked out from them by hand.
import { cutOff } from "#core/notice";
import { expect, test } from "vitest";

const LONDON = "Europe/London";
const CHICAGO = "America/Chicago";

// [zone, class begins, PT24H before, P1D before]; a class at 18:00 on the Sunday of the change
test.each([
  // 29 March: 18:00 BST is 17:00 UTC; Saturday 17:00 GMT, and Saturday 18:00 GMT
  [LONDON, "2026-03-29T17:00:00Z", "2026-03-28T17:00:00Z", "2026-03-28T18:00:00Z"],
  // 25 October: 18:00 GMT; Saturday 19:00 BST is 18:00 UTC, and Saturday 18:00 BST is 17:00 UTC
  [LONDON, "2026-10-25T18:00:00Z", "2026-10-24T18:00:00Z", "2026-10-24T17:00:00Z"],
  // 8 March: 18:00 CDT is 23:00 UTC; Saturday 17:00 CST, and Saturday 18:00 CST is Sunday 00:00 UTC
  [CHICAGO, "2026-03-08T23:00:00Z", "2026-03-07T23:00:00Z", "2026-03-08T00:00:00Z"],
  // 1 November: 18:00 CST is Monday 00:00 UTC; Saturday 19:00 CDT, and Saturday 18:00 CDT is 23:00 UTC
  [CHICAGO, "2026-11-02T00:00:00Z", "2026-11-01T00:00:00Z", "2026-10-31T23:00:00Z"],
])("NOTICE-1 in %s before %s", (zone, start, exact, nominal) => {
  expect(cutOff({ kind: "elapsed", hours: 24 }, start, zone)).toBe(exact);
  expect(cutOff({ kind: "days", days: 1 }, start, zone)).toBe(nominal);
});

test("away from a change of the clocks both end at one instant", () => {
  const start = "2026-11-25T18:30:00Z";
  for (const zone of [LONDON, CHICAGO]) {
    expect(cutOff({ kind: "elapsed", hours: 24 }, start, zone)).toBe("2026-11-24T18:30:00Z");
    expect(cutOff({ kind: "days", days: 1 }, start, zone)).toBe("2026-11-24T18:30:00Z");
  }
});
