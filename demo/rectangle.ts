type Corner = [number, number];

/** The four corners of an upright rectangle, from its left lower corner. Metres. */
export function rectangle(x: number, y: number, across: number, up: number): Corner[] {
  const right = toMillimetre(x + across);
  const top = toMillimetre(y + up);
  return [
    [x, y],
    [right, y],
    [right, top],
    [x, top],
  ];
}

function toMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}
