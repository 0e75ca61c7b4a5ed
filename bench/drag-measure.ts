import type { Page } from "playwright-core";
import type { BenchHallDocument } from "./drag-halls.ts";
import type { DragPage } from "./drag-page.ts";

/** Times in milliseconds, to a tenth. */
export type DragRecord = {
  readonly hall: string;
  /** moves of the pointer, and how many of them were drawn: moves that come while a frame is drawn are passed over */
  readonly moves: number;
  readonly drawn: number;
  readonly medianMs: number;
  readonly worstMs: number;
  /** of these, spent in the worker */
  readonly workerMedianMs: number;
  readonly times: readonly number[];
};

/** The name that the floor editor gives its times. */
const MEASURE = "hallful:drag-to-drawn";

/** Drags a corner of each hall about its place, and reads what the page itself measured. */
export async function measureDrags(
  page: DragPage,
  halls: readonly BenchHallDocument[],
  moves: number,
): Promise<readonly DragRecord[]> {
  const records: DragRecord[] = [];
  for (const hall of halls) records.push(await measureDrag(page, hall, moves));
  return records;
}

async function measureDrag(
  { browser, address }: DragPage,
  { file, document }: BenchHallDocument,
  moves: number,
): Promise<DragRecord> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  try {
    await page.addInitScript((hall) => Reflect.set(globalThis, "benchHall", hall), document);
    await page.goto(address);
    // the first plan is there when its number is said
    await page.locator(".answer:not([data-withheld])").waitFor();
    await dragCorner(page, moves);
    const read = await page.evaluate(readTimes, MEASURE);
    if (read.length === 0) throw new Error(`${file}: no drag was drawn`);
    const times = read.map((it) => tenth(it.duration));
    const inWorker = read.map((it) => it.inWorker);
    return {
      hall: file,
      moves,
      drawn: times.length,
      medianMs: median(times),
      worstMs: Math.max(...times),
      workerMedianMs: tenth(median(inWorker)),
      times,
    };
  } finally {
    await page.close();
  }
}

/** Round a small circle, a move every 16 ms as a screen of 60 frames a second gives them. */
async function dragCorner(page: Page, moves: number): Promise<void> {
  const [before, [x, y], after] = [await cornerAt(page, 0), await cornerAt(page, 1), await cornerAt(page, 2)];
  // 12 px are about a third of a metre in a usual hall; less where walls are so short that they would cross
  const nearest = Math.min(...[before, after].map((other) => Math.hypot(other[0] - x, other[1] - y)));
  const radius = Math.min(12, nearest / 8);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let move = 1; move <= moves; move++) {
    const turn = (move / moves) * 2 * Math.PI;
    await page.mouse.move(x + radius * Math.sin(turn), y + radius * (1 - Math.cos(turn)));
    await page.waitForTimeout(16);
  }
  // the last plan may still be on its way: seconds in a hall of two hundred walls
  await page.waitForTimeout(200);
  await page.waitForFunction((name) => performance.getEntriesByName(name).length > 0, MEASURE);
  await page.mouse.up();
}

async function cornerAt(page: Page, corner: number): Promise<readonly [number, number]> {
  const mark = page.locator(`#floor-handle-floor-corner-${corner} .floor-mark`);
  const box = await mark.boundingBox();
  if (box === null) throw new Error(`corner ${corner} is not drawn`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

function readTimes(name: string): readonly { duration: number; inWorker: number }[] {
  return performance.getEntriesByName(name).map((entry) => {
    const detail: unknown = Reflect.get(entry, "detail");
    const inWorker: unknown =
      typeof detail === "object" && detail !== null ? Reflect.get(detail, "inWorker") : 0;
    return { duration: entry.duration, inWorker: Number(inWorker) };
  });
}

function median(times: readonly number[]): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

function tenth(milliseconds: number): number {
  return Math.round(milliseconds * 10) / 10;
}
