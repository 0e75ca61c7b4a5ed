import type { ArrangedMatPlan, ArrangementRow, FacingMatPlan, PlacesSetOut, RingSetOut } from "#core/hall";
import { metresFromMillimetres } from "#core/words";
import { endInMetres, setOutInMetres } from "./set-out-in-metres.ts";

/** A plan for other programs, in metres as in all documents; angles in degrees. */
export function planInMetres(plan: ArrangedMatPlan) {
  const { arrangement, count, bound, proven, mats } = plan;
  return {
    arrangement,
    count,
    bound,
    proven,
    ...(plan.arrangement === "lines" || plan.arrangement === "most" ? { axis: plan.axis } : {}),
    mats: mats.map(({ centre: [x, y], angle }) => ({
      x: metresFromMillimetres(x),
      y: metresFromMillimetres(y),
      angle,
    })),
  };
}

/** How to lay it, in the form that its arrangement has. */
export function layingInMetres(plan: ArrangedMatPlan) {
  switch (plan.arrangement) {
    case "lines":
      return setOutInMetres(plan.setOut);
    case "staggered":
      return {
        ...setOutInMetres(plan.setOut),
        pitch: metresFromMillimetres(plan.pitch),
        shift: metresFromMillimetres(plan.shift),
      };
    case "facing":
      return { ...setOutInMetres(plan.setOut), middle: middleInMetres(plan.middle) };
    case "round":
      return ringsInMetres(plan.ringSetOut);
    case "most":
      return placesInMetres(plan.placesSetOut);
  }
}

function middleInMetres(middle: FacingMatPlan["middle"]) {
  if (middle === null) return null;
  const { afterLine, from, width } = middle;
  return { afterLine, from: metresFromMillimetres(from), width: metresFromMillimetres(width) };
}

function ringsInMetres(setOut: RingSetOut) {
  const { fromWall, corners } = setOut.centre;
  return {
    ...setOut,
    centre: {
      fromWall:
        fromWall === null
          ? null
          : {
              ...fromWall,
              along: metresFromMillimetres(fromWall.along),
              out: metresFromMillimetres(fromWall.out),
            },
      corners: corners.map((it) => ({ ...it, distance: metresFromMillimetres(it.distance) })),
    },
    rings: setOut.rings.map(({ radius, marks }) => ({
      radius: metresFromMillimetres(radius),
      marks: marks.map((mark) => ({ ...mark, chord: metresFromMillimetres(mark.chord) })),
    })),
  };
}

function placesInMetres(setOut: PlacesSetOut) {
  return {
    ...setOut,
    strings: setOut.strings.map((it) => ({ ...it, from: endInMetres(it.from), to: endInMetres(it.to) })),
    groups: setOut.groups.map((group) => ({
      ...group,
      out: metresFromMillimetres(group.out),
      places: group.places.map((place) => ({ ...place, along: metresFromMillimetres(place.along) })),
    })),
  };
}

/** What there is to judge a plan by; mats by their index in `mats`. */
export function judgedInMetres({ sight, between, way, sentences }: ArrangementRow) {
  return {
    cannotSee: sight === null ? null : sight.hidden.map((it) => it.mat),
    leastGaps: { side: metres(between.side), end: metres(between.end), any: metres(between.any) },
    noWayOut: way.ok ? way.value.stuck.map((it) => it.mat) : null,
    inTheWay: way.ok ? way.value.blocking : null,
    sentences,
  };
}

function metres(millimetres: number | null): number | null {
  return millimetres === null ? null : metresFromMillimetres(millimetres);
}
