import { readCalendarFile } from "#adapters/calendar";
import { type HallBookings, hallBookings } from "#core/year";
import { good, readDate, type Result, together } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";

/** A hall's calendar file, asked of a worker: large ones take some seconds. */
export type HallCalendarJob = {
  readonly bytes: Uint8Array;
  readonly from: string;
  readonly until: string;
  readonly zone: string;
};

addEventListener("message", (event: MessageEvent<LineRequest<HallCalendarJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered({ bytes, from, until, zone }: HallCalendarJob): Result<HallBookings> {
  const span = together({ from: readDate(from, "from"), until: readDate(until, "until") });
  if (!span.ok) return span;
  const file = readCalendarFile(bytes);
  if (!file.ok) return file;
  const { booked, notes } = hallBookings(file.value.events, span.value, zone);
  return good({ booked, notes: [...file.value.notes, ...notes] });
}
