import type { HallDocumentInput } from "#core/hall";

type Corner = [number, number];
type KeepClearInput = NonNullable<HallDocumentInput["keepClear"]>[number];

/** Steps of the arc; its corners lie outside the true quarter circle, so that the door never meets a mat. */
const STEPS = 6;

/**
 * The floor that a door leaf sweeps: hinge (1, 0), shut to (1.9, 0), open to (1, 0.9) gives a quarter of a
 * disc of 0.9 m with its corners rounded outwards to the millimetre.
 */
export function doorSwing(label: string, hinge: Corner, closed: Corner, open: Corner): KeepClearInput {
  const leaf: Corner = [closed[0] - hinge[0], closed[1] - hinge[1]];
  const wide: Corner = [open[0] - hinge[0], open[1] - hinge[1]];
  const stretch = 1 / Math.cos(Math.PI / 4 / STEPS);
  const arc = Array.from({ length: STEPS }, (_, step): Corner => {
    const angle = ((step + 0.5) / STEPS) * (Math.PI / 2);
    const along = Math.cos(angle) * stretch;
    const across = Math.sin(angle) * stretch;
    return [
      toMillimetre(hinge[0] + leaf[0] * along + wide[0] * across),
      toMillimetre(hinge[1] + leaf[1] * along + wide[1] * across),
    ];
  });
  return { label, outline: [hinge, closed, ...arc, open], door: { hinge, closed, open } };
}

function toMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}
