export { type ChargedSlot, chargedSlot } from "./charged-slot.ts";
export type { SlotMinutes } from "./charged-slot-types.ts";
export type { DoorSwing, Fixture, Hall, KeepClear, Mat, MatGaps, PlacePart } from "./hall.ts";
export { type HallDocument, type HallDocumentInput, hallDocumentSchema } from "./hall-document.ts";
export type { HireBand, HireHeating, HirePrice, HireRate, HireTerms } from "./hire-terms.ts";
export { type HireTermsDocument, hireTermsSchema } from "./hire-terms-document.ts";
export type {
  Capacity,
  CapacityLimit,
  MatPlan,
  PlacedMat,
  SetOut,
  SetOutLine,
  SetOutString,
  StringEnd,
} from "./mat-plan-types.ts";
export { readHireTerms } from "./read-hire-terms.ts";
export { cornerName, wallName } from "./corner-names.ts";
export { type Door, doorSwing } from "./door-swing.ts";
export { addCorner, moveCorner, removeCorner } from "./floor-corners.ts";
export { type FloorDraft, floorDraft, outlineOf, type ShapeRef } from "./floor-draft.ts";
export { canRedo, canUndo, type History, historyOf, redo, takeStep, undo } from "./floor-history.ts";
export {
  addFixture,
  addKeepClear,
  moveShape,
  placeTeacher,
  rectangleAt,
  removeShape,
  renameShape,
  resizeShape,
  setMovable,
} from "./floor-shapes.ts";
export { snapLength, snapPoint } from "./floor-snap.ts";
export {
  floorFromWalls,
  type LSides,
  lShapedFloor,
  rectangleFloor,
  type WalkedFloor,
  type WalkedWall,
} from "./floor-start.ts";
export {
  type Corner,
  cornersOf,
  moveWall,
  outwardOf,
  setWallLength,
  type Wall,
  wallsOf,
} from "./floor-walls.ts";
export {
  type GapPreset,
  gapPresetNames,
  gapPresets,
  type MatPreset,
  matPresetNames,
  matPresetOf,
  matPresets,
  presetOf,
} from "./presets.ts";
export { teacherStrip, USUAL_TEACHER_DEPTH } from "./teacher-strip.ts";
export { layingProblems } from "./check-laying.ts";
export { floorProblems } from "./check-floor.ts";
export { type HallNotes, hallToDocument } from "./hall-to-document.ts";
export { hallFromDocument, readHall } from "./read-hall.ts";
export { doorInWall } from "./door-in-wall.ts";
export { doorsFollow, hangDoor } from "./doors-follow.ts";
export { freeSpot } from "./free-spot.ts";
export { type CapacityLimits, capacityCaution, capacityOf } from "./capacity-of.ts";
export { type HallFrame, hallFrame, wallInWords } from "./hall-frame.ts";
export { floorToFill, matPlan } from "./mat-plan.ts";
export { setOutSentences } from "./set-out-sentences.ts";
export { placeWords, planInWords } from "./plan-in-words.ts";
export { snapInLine } from "./snap-in-line.ts";
export { onFloor } from "./on-floor.ts";
export { countedFrom, matInWords, matsInWords, type NamedMats, placeOfMat } from "./mat-in-words.ts";
export type { Heads } from "./sight/standing-point.ts";
export { type HiddenMat, type Sight, type SightOptions, whoCannotSee } from "./sight/who-cannot-see.ts";
export { changesToTry, leastGaps } from "./gain/changes-to-try.ts";
export type { Change, CountedPlan, Gain, Trial, Trials } from "./gain/gain-types.ts";
export { byGain, whatWouldGain } from "./gain/what-would-gain.ts";
export { type Exit, exitsOf } from "./occupancy/exits-of.ts";
export { freeArea } from "./occupancy/free-area.ts";
export { occupancy, occupancyCaution } from "./occupancy/occupancy.ts";
export { sourceInWords } from "./occupancy/occupancy-in-words.ts";
export type { ExitOccupancy, Occupancy, SpaceOccupancy } from "./occupancy/occupancy-types.ts";
export { peopleThrough } from "./occupancy/people-through.ts";
export {
  type ExitFigure,
  exitFigures,
  type ExitRule,
  type FigureSource,
  type FloorSpaceFigure,
  floorSpaceFigures,
} from "./occupancy/published-figures.ts";
export { type ClearWay, clearWay, type StuckMat, widthProblems } from "./way/clear-way.ts";
export { waysToDoors } from "./way/ways-to-doors.ts";
export { type Bay, type PlaceOptions, type WithPlace, withPlace } from "./way/with-place.ts";
export { closeMeasuredWalls } from "./measuring/close-measured-walls.ts";
export type { AdjustedMeasure, ClosedWalls, NextDiagonal, Suspect } from "./measuring/closed-walls-types.ts";
export type { MeasuredDiagonal, MeasuredWall, MeasureKind } from "./measuring/measured-walls.ts";
export { type ReplacedOutline, replacedOutline } from "./measuring/replaced-outline.ts";
export { straightened } from "./measuring/straightened.ts";
export { type KnownDistance, type TracedPlan, type Tracing, tracedPlan } from "./measuring/traced-plan.ts";
export { arrangedPlan } from "./arrangement/arranged-plan.ts";
export { type ArrangementRow, arrangementRow, USUAL_WAY } from "./arrangement/arrangement-row.ts";
export {
  type ArrangedMatPlan,
  type Arrangement,
  type ArrangementOptions,
  arrangements,
  type FacingMatPlan,
  type Middle,
  type MostMatPlan,
  type RoundMatPlan,
  type StaggeredMatPlan,
} from "./arrangement/arrangement-types.ts";
export { compareArrangements, type CompareOptions } from "./arrangement/compare-arrangements.ts";
export { USUAL_MIDDLE } from "./arrangement/facing-mats.ts";
export type { LeastBetween } from "./arrangement/least-between.ts";
export {
  advanceMostMats,
  mostMatPlan,
  type MostMatsRun,
  startMostMats,
} from "./arrangement/most-mats.ts";
export type { MostProgress } from "./arrangement/most-progress.ts";
export type {
  NamedString,
  PlaceAlong,
  PlaceGroup,
  PlacesSetOut,
} from "./arrangement/places-set-out-types.ts";
export { planWorking } from "./arrangement/plan-working.ts";
export { arrangementWords, proofSentence } from "./arrangement/proof-sentence.ts";
export type {
  CentreSetOut,
  Quarter,
  RingMark,
  RingSetOut,
  SetOutRing,
} from "./arrangement/ring-set-out-types.ts";
export { USUAL_LEAST } from "./arrangement/round-mats.ts";
export { setOutInWords } from "./arrangement/set-out-in-words.ts";
export { sightOptions } from "./arrangement/sight-options.ts";
export { type BestSight, bestSight, type SightPlan } from "./best-sight/best-sight.ts";
export type { SightCandidatesOptions } from "./best-sight/sight-candidates.ts";
