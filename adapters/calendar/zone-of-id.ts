import { Temporal } from "temporal-polyfill";

/** Names that office programs give to zones, with the IANA zone of the same clocks. */
const OFFICE: Readonly<Record<string, string>> = {
  "GMT Standard Time": "Europe/London",
  "Greenwich Standard Time": "Atlantic/Reykjavik",
  "W. Europe Standard Time": "Europe/Berlin",
  "Central Europe Standard Time": "Europe/Budapest",
  "Romance Standard Time": "Europe/Paris",
  "Eastern Standard Time": "America/New_York",
  "Central Standard Time": "America/Chicago",
  "Mountain Standard Time": "America/Denver",
  "Pacific Standard Time": "America/Los_Angeles",
};

/**
 * The IANA zone of a TZID: itself, an office program's name, the end of a path like
 * "/example.org/2026/Europe/London", or the place that the file's own VTIMEZONE names. undefined for none of them.
 */
export function zoneOfId(id: string, places: ReadonlyMap<string, string>): string | undefined {
  const tail = /(?:^|\/)([A-Za-z_]+\/[A-Za-z_]+(?:\/[A-Za-z_]+)?)$/.exec(id)?.[1];
  const tried = [id, OFFICE[id], places.get(id), tail, tail?.split("/").slice(-2).join("/")];
  return tried.find((it) => it !== undefined && isZone(it));
}

function isZone(zone: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}
