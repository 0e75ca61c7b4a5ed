import type { ShapeRef } from "#core/hall";
import { rowId } from "./thing-list.tsx";

/** Opens the list beside the drawing at the row of a shape and puts the cursor into its first field. */
export function openRow(shape: ShapeRef): void {
  openList();
  const row = document.getElementById(rowId(shape));
  const field = row?.querySelector<HTMLElement>("input, select");
  field?.focus();
}

/** The list of what stands on the floor, by the id that `FloorLists` gives it. */
export function openList(): void {
  const list = document.getElementById("floor-things");
  if (list instanceof HTMLDetailsElement) list.open = true;
}
