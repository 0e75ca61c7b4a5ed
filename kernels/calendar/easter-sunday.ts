import { Temporal } from "temporal-polyfill";

/**
 * Easter Sunday of the western churches: 28 March 2027. Computus by the ecclesiastical full moon, as in
 * J. Meeus, Astronomical Algorithms, chapter 8, for the Gregorian calendar (from memory).
 */
export function easterSunday(year: number): Temporal.PlainDate {
  // the year's place in the 19-year cycle of the moon
  const golden = year % 19;
  // leap days that the Gregorian calendar leaves out, and the moon's own correction
  const century = Math.floor(year / 100);
  const skipped = century - Math.floor(century / 4);
  const moon = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  // days from 21 March to the full moon, and from there to the Sunday
  const full = (19 * golden + skipped - moon + 15) % 30;
  const early = Math.floor((golden + 11 * full + 22 * weekdayOfMoon(year, century, full)) / 451);
  const days = full + weekdayOfMoon(year, century, full) - 7 * early;
  return Temporal.PlainDate.from({ year, month: 3, day: 22 }).add({ days });
}

function weekdayOfMoon(year: number, century: number, full: number): number {
  const within = year % 100;
  return (32 + 2 * (century % 4) + 2 * Math.floor(within / 4) - full - (within % 4)) % 7;
}
