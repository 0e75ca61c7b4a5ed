import { useEffect } from "react";
import { readOnDevice } from "../drafts/on-device.ts";

/** Sends what waits of the record on whatever page of the practice she is; the record itself is loaded only then. */
export function useRecordDelivery(practice: string): void {
  useEffect(() => {
    if (!hasWaiting(readOnDevice(`record/${practice}`))) return;
    void import("./use-record.ts").then(({ recordKeeper }) => recordKeeper(practice, "en-GB"));
  }, [practice]);
}

function hasWaiting(outbox: unknown): boolean {
  return (
    typeof outbox === "object" &&
    outbox !== null &&
    "queue" in outbox &&
    Array.isArray(outbox.queue) &&
    outbox.queue.length > 0
  );
}
