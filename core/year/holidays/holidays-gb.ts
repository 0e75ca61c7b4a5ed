import { easterSunday } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { dayOf, isWeekend, lastWeekday, nthWeekday } from "./dates-by-rule.ts";
import type { PublicHoliday, Region } from "./public-holiday.ts";

export type BritishRegion = Extract<Region, `GB-${string}`>;

/**
 * The bank holidays of a part of the United Kingdom in a year, in order: by the Banking and Financial Dealings Act
 * 1971 and the yearly proclamations, as the government's list has them. A holiday at a weekend has the next weekday
 * that is none as its substitute. Days proclaimed once are known for 2020 to 2026; later ones are for her to add.
 */
export function holidaysGb(region: BritishRegion, year: number): readonly PublicHoliday[] {
  const standing = standingHolidays(region, year);
  const moved = withSubstitutes(standing);
  const once = proclaimedOnce(region, year);
  return [...moved, ...once].toSorted((a, b) => Temporal.PlainDate.compare(a.date, b.date));
}

type Named = { readonly date: Temporal.PlainDate; readonly name: string };

function standingHolidays(region: BritishRegion, year: number): readonly Named[] {
  const easter = easterSunday(year);
  const scottish = region === "GB-SCT";
  const irish = region === "GB-NIR";
  return [
    { date: dayOf(year, 1, 1), name: "New Year’s Day" },
    ...keptIn(scottish, "2 January", dayOf(year, 1, 2)),
    ...keptIn(irish, "St Patrick’s Day", dayOf(year, 3, 17)),
    { date: easter.subtract({ days: 2 }), name: "Good Friday" },
    ...keptIn(!scottish, "Easter Monday", easter.add({ days: 1 })),
    // in 2020 it was moved to the Friday of the 75th anniversary of the end of the war in Europe
    { date: year === 2020 ? dayOf(2020, 5, 8) : nthWeekday(year, 5, 1, 1), name: "Early May bank holiday" },
    // in 2022 it was moved beside the jubilee
    { date: year === 2022 ? dayOf(2022, 6, 2) : lastWeekday(year, 5, 1), name: "Spring bank holiday" },
    ...keptIn(irish, "Battle of the Boyne", dayOf(year, 7, 12)),
    {
      date: scottish ? nthWeekday(year, 8, 1, 1) : lastWeekday(year, 8, 1),
      name: "Summer bank holiday",
    },
    ...keptIn(scottish, "St Andrew’s Day", dayOf(year, 11, 30)),
    { date: dayOf(year, 12, 25), name: "Christmas Day" },
    { date: dayOf(year, 12, 26), name: "Boxing Day" },
  ];
}

function keptIn(is: boolean, name: string, date: Temporal.PlainDate): readonly Named[] {
  return is ? [{ date, name }] : [];
}

/** Christmas Day 2027, a Saturday, has Monday the 27th, and Boxing Day, a Sunday, Tuesday the 28th. */
function withSubstitutes(standing: readonly Named[]): readonly PublicHoliday[] {
  const taken = new Set(standing.map(({ date }) => date.toString()));
  return standing.flatMap(({ date, name }) => {
    if (!isWeekend(date)) return [{ date, name }];
    let substitute = date;
    while (isWeekend(substitute) || taken.has(substitute.toString()))
      substitute = substitute.add({ days: 1 });
    taken.add(substitute.toString());
    return [
      { date, name, movedTo: substitute },
      { date: substitute, name, standsFor: date },
    ];
  });
}

const ONCE: readonly (readonly [string, number, number, number, readonly BritishRegion[]])[] = [
  ["Platinum Jubilee", 2022, 6, 3, ["GB-ENG", "GB-WLS", "GB-SCT", "GB-NIR"]],
  ["State funeral of Queen Elizabeth II", 2022, 9, 19, ["GB-ENG", "GB-WLS", "GB-SCT", "GB-NIR"]],
  ["Coronation of King Charles III", 2023, 5, 8, ["GB-ENG", "GB-WLS", "GB-SCT", "GB-NIR"]],
  ["World Cup bank holiday", 2026, 6, 15, ["GB-SCT"]],
];

function proclaimedOnce(region: BritishRegion, year: number): readonly PublicHoliday[] {
  return ONCE.flatMap(([name, in_, month, day, where]) =>
    in_ === year && where.includes(region) ? [{ date: dayOf(year, month, day), name }] : [],
  );
}
