import { assert, integer, option, property, record } from "fast-check";
import { expect, test } from "vitest";
import { type CapacityLimits, capacityOf } from "./capacity-of.ts";

const sixteen = { count: 16, bound: 16, proven: true };

test("HALL-12: the posted number counts the teacher, so a hall for 60 leaves 59", () => {
  expect(capacityOf(sixteen, { postedCapacity: 60 })).toEqual({
    capacity: 16,
    limitedBy: ["floor"],
    sentence:
      "16 mats fit; the hall’s own limit is 60, which leaves 59 beside you; so 16 can come: the floor sets it.",
  });
});

test("HALL-12: every limit that is equal to the least is named", () => {
  const limits = { postedCapacity: 16, peopleNotOnMats: 2, matsOwned: 14, ownCap: 15, insurerCap: 30 };
  // 16 posted less 2 is 14, and so is the number of mats
  expect(capacityOf(sixteen, limits)).toEqual({
    capacity: 14,
    limitedBy: ["posted number", "mats owned"],
    sentence:
      "16 mats fit; the hall’s own limit is 16, which leaves 14 beside you and 1 other; there are 14 mats to lie on; " +
      "you want at most 15; your insurer covers 30; so 14 can come: the hall’s own limit and the number of mats set it.",
  });
});

test("HALL-12: limits that are not known are left out", () => {
  expect(capacityOf(sixteen, { matsOwned: null, ownCap: undefined }).sentence).toBe(
    "16 mats fit; so 16 can come: the floor sets it.",
  );
});

test("HALL-12: a hall for one, the teacher, leaves nobody, and never less", () => {
  expect(capacityOf(sixteen, { postedCapacity: 1 })).toMatchObject({
    capacity: 0,
    limitedBy: ["posted number"],
  });
  expect(capacityOf(sixteen, { postedCapacity: 0, peopleNotOnMats: 2 }).capacity).toBe(0);
  expect(capacityOf({ count: 0, bound: 0, proven: true }).sentence).toBe(
    "No mat fits; so nobody can come: the floor sets it.",
  );
});

test("HALL-12: a plan that is not proven says how many might fit", () => {
  expect(capacityOf({ count: 1, bound: 3, proven: false }).sentence).toBe(
    "1 mat fits, perhaps up to 3; so 1 can come: the floor sets it.",
  );
});

test("HALL-12: the capacity is under every limit and reaches the ones it names", () => {
  const people = option(integer({ min: 0, max: 60 }));
  const limits = record({ postedCapacity: people, matsOwned: people, ownCap: people, insurerCap: people });
  assert(
    property(integer({ min: 0, max: 60 }), limits, (count, given: CapacityLimits) => {
      const { capacity, limitedBy } = capacityOf({ count, bound: count, proven: true }, given);
      const most = {
        floor: count,
        "posted number": given.postedCapacity == null ? Infinity : Math.max(0, given.postedCapacity - 1),
        "mats owned": given.matsOwned ?? Infinity,
        "own cap": given.ownCap ?? Infinity,
        insurer: given.insurerCap ?? Infinity,
      };
      expect(capacity).toBe(Math.min(...Object.values(most)));
      for (const [limit, least] of Object.entries(most)) {
        expect(limitedBy.some((it) => it === limit)).toBe(least === capacity);
      }
    }),
  );
});
