import type { RecordHere } from "./record-keeper.ts";

/** "3 marks wait for signal." or "All kept."; the line that says where her work is. */
export function recordWords({ ready, outbox, silent, onDevice }: RecordHere): string {
  const { queue, unsettled } = outbox;
  if (queue.length > 0 && !onDevice) return "This device keeps nothing: do not close the page.";
  const refused = unsettled.length === 0 ? [] : [`${unsettled.length} not kept yet: settle below.`];
  if (queue.length > 0) return [waiting(queue, silent), ...refused].join(" ");
  if (!ready) return silent ? "No signal, and nothing of the record is on this device." : "Reading …";
  return [...(refused.length > 0 ? refused : ["All kept."]), ...(silent ? ["No signal."] : [])].join(" ");
}

function waiting(queue: RecordHere["outbox"]["queue"], silent: boolean): string {
  const marks = queue.every((it) => it.do.kind === "mark");
  const one = queue.length === 1;
  const what = `${queue.length} ${marks ? "mark" : "entry"}`;
  const some = one ? what : marks ? `${what}s` : `${queue.length} entries`;
  if (!silent) return `Sending ${some} …`;
  return `${some} ${one ? "waits" : "wait"} for signal.`;
}
