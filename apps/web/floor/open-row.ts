import type { ShapeRef } from "#core/hall";
import { rowId } from "./thing-list.tsx";

/** Opens the list beside the drawing at the row of a shape and puts the cursor into its first field. */
export function openRow(shape: ShapeRef): void {
  const row = document.getElementById(rowId(shape));
  const list = row?.closest("details");
  if (list) list.open = true;
  const field = row?.querySelector<HTMLElement>("input, select");
  field?.focus();
}
