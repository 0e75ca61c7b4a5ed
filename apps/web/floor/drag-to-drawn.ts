import type { Hall } from "#core/hall";
import type { FloorPart } from "./floor-part.ts";

/** The name under which a bench finds the times, in `performance.getEntriesByName`. */
export const DRAG_TO_DRAWN = "hallful:drag-to-drawn";

const moves = new WeakMap<FloorPart | Hall, number>();

/** Remembers when the pointer was where this floor has it, by the clock of the event. */
export function noteMove(part: FloorPart, time: number): void {
  moves.set(part, time);
}

/** This hall is planned for that floor, so that its plan is known again even when newer floors came meanwhile. */
export function noteHall(part: FloorPart, hall: Hall): void {
  const time = moves.get(part);
  if (time === undefined) return;
  moves.delete(part);
  moves.set(hall, time);
}

/**
 * To be called when the mats of this hall are in the page: measures from the pointer's move until the frame that
 * shows them has been handed over, which is a task after that frame's callbacks. The milliseconds that the worker
 * spent go with it as `detail.inWorker`.
 */
export function noteDrawn(hall: Hall, inWorker: number | null): void {
  const start = moves.get(hall);
  if (start === undefined) return;
  moves.delete(hall);
  requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.addEventListener("message", () => {
      performance.measure(DRAG_TO_DRAWN, { start, end: performance.now(), detail: { inWorker } });
      channel.port1.close();
    });
    channel.port1.start();
    channel.port2.postMessage(null);
  });
}
