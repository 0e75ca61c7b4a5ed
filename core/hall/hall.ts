import type { Point, Polygon } from "#kernels/geometry";
import type { Millimetres } from "#core/words";

export type Mat = { readonly length: Millimetres; readonly width: Millimetres };
export type MatGaps = { readonly side: Millimetres; readonly end: Millimetres; readonly wall: Millimetres };

export type Fixture = { readonly label: string; readonly outline: Polygon; readonly movable: boolean };
export type DoorSwing = {
  readonly hinge: Point;
  readonly closed: Point;
  readonly open: Point;
  /** whether it is a way out in an emergency, as far as anybody has said */
  readonly wayOut?: boolean;
};
/** Of a place for a wheelchair or a chair: the bay, or a piece of the way from it to a door. */
export type PlacePart = { readonly number: number; readonly part: "bay" | "way" };
export type KeepClear = {
  readonly label: string;
  readonly outline: Polygon;
  readonly door?: DoorSwing;
  readonly place?: PlacePart;
};

/** A measured hall that has been read and found sound: lengths in whole millimetres, y pointing up. */
export type Hall = {
  readonly name: string;
  readonly outline: Polygon;
  readonly fixtures: readonly Fixture[];
  readonly keepClear: readonly KeepClear[];
  readonly teacher: { readonly outline: Polygon } | null;
  readonly mat: Mat;
  readonly gaps: MatGaps;
  readonly axis: number | "auto";
  /** how the length of mats in lines has to lie, degrees from +x; then the axis is this one. Either way unless told */
  readonly lengthAlong?: number;
  /** how wide the clear middle between two banks is to be; 2 m unless told */
  readonly middleWidth?: Millimetres;
  /** around where rings are to lie; the teacher’s place or the most open point unless told */
  readonly ringCentre?: Point;
  /** people, from the hall's own notice; undefined when none is known */
  readonly postedCapacity: number | undefined;
  /** teacher and helpers, who count against the posted number */
  readonly peopleNotOnMats: number;
};
