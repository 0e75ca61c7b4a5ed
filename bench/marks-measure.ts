import type { MarksPage } from "./marks-page.ts";

export type MarksTimes = { readonly marks: number; readonly medianMs: number; readonly worstMs: number };

/** Taps every name of the register in turn, so many rounds, and times each until the frame after the mark is drawn. */
export async function measureMarks(
  { browser, address }: MarksPage,
  rounds: number,
  signal: boolean,
): Promise<MarksTimes> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.goto(address);
  await page.getByText("All kept.").waitFor();
  await context.setOffline(!signal);
  const times = await page.evaluate<readonly number[]>(tapAll(rounds));
  await context.close();
  const sorted = times.toSorted((a, b) => a - b);
  return {
    marks: sorted.length,
    medianMs: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN,
    worstMs: sorted.at(-1) ?? Number.NaN,
  };
}

/**
 * Runs in the page, and is text because nothing else of a bench does. A frame is on its way to the screen once a
 * message sent in it is answered; a person's next tap comes after a moment.
 */
const tapAll = (rounds: number) => `(async () => {
  const drawn = (name, before) => new Promise((done) => {
    const look = () => {
      if (name.getAttribute("aria-pressed") === before) return requestAnimationFrame(look);
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = done;
        port2.postMessage(null);
      });
    };
    look();
  });
  const times = [];
  for (let round = 0; round < ${rounds}; round += 1) {
    for (const name of document.querySelectorAll(".reg-name")) {
      const before = name.getAttribute("aria-pressed");
      const started = performance.now();
      name.click();
      await drawn(name, before);
      times.push(performance.now() - started);
      await new Promise((wait) => setTimeout(wait, 100));
    }
  }
  return times;
})()`;
