import type { LengthUnits } from "#core/words";
import { lengthSaid } from "./places-sentences.ts";
import type { CentreSetOut, Quarter, RingMark, RingSetOut, SetOutRing } from "./ring-set-out-types.ts";

type Said = (millimetres: number) => string;

const quarterWords: Readonly<Record<Quarter, string>> = {
  front: "the front mark",
  right: "the right mark",
  back: "the back mark",
  left: "the left mark",
};

/** The set-out of rings as sentences, one a line; an empty plan has one that says so. */
export function ringSentences(
  { centre, rings, toTheCentimetre }: Omit<RingSetOut, "sentences">,
  units: LengthUnits,
): readonly string[] {
  if (rings.length === 0) return ["There is no mat to set out."];
  const said: Said = (figure) => lengthSaid(figure, units);
  return [
    centreSentence(centre, said),
    ...(centre.corners.length < 2 || centre.fromWall === null ? [] : [checkSentence(centre, said)]),
    `Hold a string there. ${quartersSentence(centre)}`,
    ...rings.map((ring, index) => ringSentence(ring, index + 1, said)),
    "Each mat lies with the middle of its foot end on its place and its length in line with the string.",
    ...(toTheCentimetre
      ? []
      : ["A figure with three decimals is to the millimetre: a whole centimetre would break a gap there."]),
    ...(units === "feet"
      ? ["Feet and inches are to the nearest quarter inch; the figures in metres are exact."]
      : []),
  ];
}

function centreSentence({ fromWall, corners }: CentreSetOut, said: Said): string {
  if (fromWall !== null) {
    const { wall, corner, along, out } = fromWall;
    return `The centre: from corner ${corner} go ${said(along)} along ${wall}, then ${said(out)} straight out from it.`;
  }
  return `The centre lies ${cornersSaid(corners, said)}.`;
}

function checkSentence({ corners }: CentreSetOut, said: Said): string {
  return `To check it: it lies ${cornersSaid(corners, said)}.`;
}

/** To the centimetre: it is a check, or, without a wall, all there is. */
function cornersSaid(corners: CentreSetOut["corners"], said: Said): string {
  return corners
    .map(({ corner, distance }) => `${said(Math.round(distance / 10) * 10)} from corner ${corner}`)
    .join(" and ");
}

function quartersSentence({ fromWall }: CentreSetOut): string {
  const towards = fromWall === null ? "the front" : fromWall.wall;
  return `A ring’s front mark is where the string points straight to ${towards}, its back mark straight behind the centre, its right and left marks half-way between, as seen facing ${towards}.`;
}

function ringSentence({ radius, marks }: SetOutRing, number: number, said: Said): string {
  const quarter = Math.round(radius * Math.SQRT2);
  const places = marks.map((mark, index) => markSaid(mark, index + 1, said));
  const count = `${marks.length} ${marks.length === 1 ? "mat" : "mats"}`;
  return `Ring ${number}: ${count} on a string of ${said(radius)}; its marks are ${said(Math.round(quarter / 10) * 10)} apart. Straight from a mark: ${places.join("; ")}.`;
}

function markSaid({ from, side, chord }: RingMark, number: number, said: Said): string {
  if (chord === 0) return `mat ${number} on ${quarterWords[from]}`;
  return `mat ${number} ${said(chord)} to the ${side} of ${quarterWords[from]}`;
}
