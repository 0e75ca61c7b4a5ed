import type { Way } from "./week-types.ts";

export type MapPoint = { readonly latitude: number; readonly longitude: number };
export type RoadGuess = { readonly detour: number; readonly kmPerHour: number };

/** mean radius, IUGG */
const EARTH_KM = 6371.0088;

/**
 * A guess of the way between two points of the map: the great circle by the haversine formula, lengthened by the
 * detour, at one speed; kilometres to a tenth, minutes rounded up to five.
 */
export function guessedWay(from: MapPoint, to: MapPoint, { detour, kmPerHour }: RoadGuess): Way {
  const km = greatCircle(from, to) * detour;
  // the noise of the sines does not make five minutes more
  const minutes = Math.max(0, Math.ceil(((km / kmPerHour) * 60) / 5 - 1e-9) * 5);
  return { minutes, km: Math.round(km * 10) / 10, guess: true };
}

function greatCircle(from: MapPoint, to: MapPoint): number {
  const [north, south] = [radians(from.latitude), radians(to.latitude)];
  const half = Math.sin((south - north) / 2) ** 2;
  const turn = Math.sin(radians(to.longitude - from.longitude) / 2) ** 2;
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(half + Math.cos(north) * Math.cos(south) * turn)));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
