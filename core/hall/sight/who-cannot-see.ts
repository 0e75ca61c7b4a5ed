import { type Point, pointToSegment } from "#kernels/geometry";
import { centroidOf } from "../centroid-of.ts";
import type { Hall } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { countedFrom, matInWords, matsInWords, type NamedMats } from "../mat-in-words.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { dot, subtracted } from "../vectors.ts";
import { type Heads, sideTowards, standingPoint } from "./standing-point.ts";

/** Half the breadth of a person, in millimetres, and how many rows before her are looked past. */
export type SightOptions = {
  /** 250 unless told */
  readonly radius?: number;
  /** 2 unless told */
  readonly rows?: number;
  /** "near" unless told: heads to the teacher */
  readonly heads?: Heads;
  /** what rows are counted towards: the hall's front unless told; in a ring or two banks the teacher herself */
  readonly rowsTowards?: "front" | "teacher";
  /** where she stands, in millimetres: the centre of her zone unless told */
  readonly teacher?: Point;
};

export type Sight = {
  readonly seeing: number;
  readonly hidden: readonly HiddenMat[];
  /** the answer first, then who does not see, then from where lines and mats are counted */
  readonly sentences: readonly string[];
};

export type HiddenMat = {
  /** by its index in the plan */
  readonly mat: number;
  /** on which mats the people stand who are in the way, by index */
  readonly behind: readonly number[];
  /** "mat 2 of line 3 is behind mat 2 of line 2" */
  readonly says: string;
};

/**
 * Which mats do not see the teacher; null where no place for her is known and so nothing to say. Millimetres.
 *
 * Each person stands in the middle of the short side at the head end of the mat (`standingPoint`), the teacher in
 * the centre of the area of her zone. A mat sees her when the straight line between the two comes no nearer than
 * `radius` to the point of anybody else who stands no more than two rows nearer the front, a line that just touches
 * passing. How many rows nearer somebody stands is the distance between the two points, along the side of the
 * looking mat that points most to the front, over the pitch of mats that way (length and end gap, or width and side
 * gap), rounded: −0.5 < rows ≤ 2.5. So her own row counts too: a neighbour can stand in the way of a look sideways.
 * Taller people, a stage and pillars are not looked at.
 */
export function whoCannotSee(hall: Hall, plan: NamedMats, options: SightOptions = {}): Sight | null {
  const found = behindWhom(hall, plan.mats, options);
  if (found === null) return null;
  const hidden = found.map(({ mat, behind }) => ({ mat, behind, says: hiddenSays(plan, mat, behind) }));
  const seeing = plan.mats.length - hidden.length;
  return { seeing, hidden, sentences: sentencesOf(plan, seeing, hidden) };
}

/** Who is behind whom, by index, without a word; null where no place for the teacher is known. */
export function behindWhom(
  hall: Hall,
  mats: readonly PlacedMat[],
  options: SightOptions,
): readonly Pick<HiddenMat, "mat" | "behind">[] | null {
  const teacher = options.teacher ?? (hall.teacher === null ? null : centroidOf(hall.teacher.outline));
  if (teacher === null) return null;
  const { radius = 250, heads = "near" } = options;
  const frame = hallFrame(hall);
  const people = mats.map((placed) => standingPoint(hall.mat, placed, teacher, frame, heads));
  return mats.flatMap((placed, mat) => {
    const eye = people[mat] ?? teacher;
    const wished = options.rowsTowards === "teacher" ? subtracted(teacher, eye) : frame.front;
    const isBefore = withinRows(hall, placed, eye, wished, options.rows ?? 2);
    const behind = people.flatMap((person, other) =>
      other !== mat && isBefore(person) && pointToSegment(person, eye, teacher) < radius ? [other] : [],
    );
    return behind.length === 0 ? [] : [{ mat, behind }];
  });
}

/** Whether somebody stands in the row of the looking mat or in one of so many before it. */
function withinRows(
  { mat, gaps }: Hall,
  placed: PlacedMat,
  eye: Point,
  wished: Point,
  most: number,
): (person: Point) => boolean {
  const { way, along } = sideTowards(placed, wished);
  const pitch = along === "length" ? mat.length + gaps.end : mat.width + gaps.side;
  return (person) => {
    const rows = dot(subtracted(person, eye), way) / pitch;
    return rows > -0.5 && rows <= most + 0.5;
  };
}

function hiddenSays(plan: NamedMats, mat: number, behind: readonly number[]): string {
  return `${matInWords(plan, mat)} is behind ${matsInWords(plan, behind)}`;
}

function sentencesOf(plan: NamedMats, seeing: number, hidden: readonly HiddenMat[]): readonly string[] {
  const count = plan.mats.length;
  if (count === 0) return ["There is no mat that could see the teacher."];
  if (hidden.length === 0) {
    return [count === 1 ? "The one mat sees the teacher." : `All ${count} mats see the teacher.`];
  }
  const who = matsInWords(
    plan,
    hidden.map((it) => it.mat),
  );
  return [
    `${seeing} of ${count} mats ${seeing === 1 ? "sees" : "see"} the teacher past the people before them.`,
    `Behind somebody: ${who}.`,
    ...countedFrom(plan),
  ];
}
