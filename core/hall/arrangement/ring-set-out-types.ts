/** How to lay rings with a string and a tape. Millimetres. */
export type RingSetOut = {
  /** whether every figure is a whole centimetre */
  readonly toTheCentimetre: boolean;
  readonly centre: CentreSetOut;
  /** from the inside */
  readonly rings: readonly SetOutRing[];
  /** in metres, one a line */
  readonly sentences: readonly string[];
};

/**
 * Where the string is held: so far along a wall from its first corner, then so far straight out from the wall; null
 * where no wall lies straight before it. The way to two corners is told to check it.
 */
export type CentreSetOut = {
  readonly fromWall: {
    readonly wall: string;
    readonly corner: string;
    readonly along: number;
    readonly out: number;
  } | null;
  readonly corners: readonly { readonly corner: string; readonly distance: number }[];
};

export type SetOutRing = {
  /** the length of the string, from the centre to the feet of the mats */
  readonly radius: number;
  readonly marks: readonly RingMark[];
};

/** The middle of a mat's foot end on its ring. */
export type RingMark = {
  /**
   * which point of the ring the tape starts at: those straight before the centre towards the wall, to the right of
   * it, behind it and to the left, as seen facing the wall
   */
  readonly from: Quarter;
  readonly side: "left" | "right";
  /** straight from there to the mat, in millimetres */
  readonly chord: number;
  /** degrees to the right of straight to the wall, 0 ≤ bearing < 360, to a tenth */
  readonly bearing: number;
};

export const quarters = ["front", "right", "back", "left"] as const;
export type Quarter = (typeof quarters)[number];
