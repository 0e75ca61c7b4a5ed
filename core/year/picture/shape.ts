/** A mark of a drawing, in millimetres from its top left. Ink on paper alone, so that any printer can print it. */
export type Shape =
  | {
      readonly kind: "box";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly filled: boolean;
      /** width of its line; 0 for none */
      readonly line: number;
    }
  | {
      readonly kind: "line";
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly line: number;
      readonly dashed: boolean;
    }
  | { readonly kind: "corner"; readonly x: number; readonly y: number; readonly size: number }
  | {
      readonly kind: "text";
      readonly x: number;
      /** the line on which the letters stand */
      readonly y: number;
      readonly size: number;
      readonly text: string;
      readonly bold: boolean;
      readonly anchor: "start" | "middle" | "end";
    };

export type Drawing = { readonly width: number; readonly height: number; readonly shapes: readonly Shape[] };

export function moved(shape: Shape, dx: number, dy: number): Shape {
  if (shape.kind !== "line") return { ...shape, x: shape.x + dx, y: shape.y + dy };
  const { from, to } = shape;
  return { ...shape, from: [from[0] + dx, from[1] + dy], to: [to[0] + dx, to[1] + dy] };
}
