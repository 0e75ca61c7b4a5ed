import { instantOf, secondsBetween } from "./instants.ts";
import { spanWords } from "./moment-words.ts";

export type DeviceTimes = {
  /** what the device's clock showed when it sent */
  readonly deviceSent: string;
  /** what the server's clock showed when that arrived */
  readonly serverReceived: string;
};

export type DeviceClock = {
  /** how far the device's clock is ahead of the server's; below nought it is behind */
  readonly offsetSeconds: number;
  /** by more than two minutes either way: more than a slow line explains */
  readonly off: boolean;
  /** "" when it is not off */
  readonly sentence: string;
};

// a message over a poor line takes seconds, a clock that nobody set is out by minutes or hours
const OFF_SECONDS = 120;

/** How a device's clock stands against the server's, from the two times of one message. */
export function deviceClock({ deviceSent, serverReceived }: DeviceTimes): DeviceClock {
  const offsetSeconds = secondsBetween(serverReceived, deviceSent);
  const off = Math.abs(offsetSeconds) > OFF_SECONDS;
  const by = spanWords(Math.floor(Math.abs(offsetSeconds) / 60));
  const way = offsetSeconds > 0 ? "ahead" : "behind";
  return {
    offsetSeconds,
    off,
    sentence: off
      ? `The clock of this device is ${by} ${way}. The time was corrected by as much, so nobody is late or early because of it.`
      : "",
  };
}

export type MadeAt = {
  readonly made: string;
  readonly clock: DeviceClock;
  /** the device says that it was made after it was sent: its clock was set in between, so arrival counts */
  readonly byArrival: boolean;
  readonly sentence: string;
};

/**
 * The instant at which something was made, never by a device's clock alone: a clock that is off is taken out,
 * and nothing was made after it arrived.
 */
export function madeAt(times: DeviceTimes & { readonly deviceMade: string }): MadeAt {
  const clock = deviceClock(times);
  const byArrival = secondsBetween(times.deviceSent, times.deviceMade) > 0;
  const mended = clock.off
    ? instantOf(times.deviceMade).subtract({ milliseconds: Math.round(clock.offsetSeconds * 1000) })
    : instantOf(times.deviceMade);
  const arrived = instantOf(times.serverReceived);
  const made = byArrival || mended.epochMilliseconds > arrived.epochMilliseconds ? arrived : mended;
  return {
    made: made.toString(),
    clock,
    byArrival,
    sentence: byArrival
      ? "The clock of this device was set between the moment this was done and the moment it was sent, so it counts from when it arrived. If that makes somebody late, ask them and decide kindly."
      : clock.sentence,
  };
}
