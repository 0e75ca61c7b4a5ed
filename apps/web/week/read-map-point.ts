type MapPoint = { readonly latitude: number; readonly longitude: number };

/** "51.21, -2.18" as maps copy it; also with a true minus, or with letters for the four winds. Null for anything else. */
export function readMapPoint(text: string): MapPoint | null {
  const parts = text
    .trim()
    .replaceAll("−", "-")
    .split(/[,;]\s*|\s+(?=[-\d])/);
  const [latitude, longitude, ...more] = parts.map(readDegrees);
  if (latitude === undefined || longitude === undefined || more.length > 0) return null;
  const sound = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
  return sound ? { latitude, longitude } : null;
}

/** "2.18 W" is −2.18; NaN for what is no number, which no range holds. */
function readDegrees(text: string): number {
  const read = /^(-?\d+(?:\.\d+)?)\s*°?\s*([NSEW]?)$/i.exec(text.trim());
  if (read === null) return Number.NaN;
  const against = /[SW]/i.test(read[2] ?? "");
  return Number(read[1]) * (against ? -1 : 1);
}
