export {
  type AccidentEvent,
  type AccidentFacts,
  type AccidentState,
  accidentEventSchema,
  accidentFactsSchema,
  applyAccident,
} from "./accident-event.ts";
export { acceptOffer, leaveWaiting, notWaiting } from "./answer-offer.ts";
export { applySession } from "./apply-session.ts";
export { cameOver, closeRegister, markPlace, placeUnknown, walkIn } from "./at-the-door.ts";
export { giveUpPlace } from "./give-up-place.ts";
export { type Held, holdPlaces, type PlaceAsked, sessionCancelled } from "./hold-place.ts";
export { offerUntil } from "./offer-until.ts";
export {
  type ConsentKind,
  type Contact,
  consentKinds,
  contactSchema,
  type PersonEvent,
  personEventSchema,
} from "./person-event.ts";
export { applyPerson, type Consent, consents, type PersonState } from "./person-state.ts";
export {
  type CancelReason,
  cancelReasons,
  type MeansOfPaying,
  meansOfPaying,
  noticeSchema,
  type Paid,
  type PlaceKind,
  placeKinds,
  type SessionEvent,
  sessionEventSchema,
} from "./session-event.ts";
export {
  freeMats,
  goesBack,
  isCharged,
  paidFor,
  type Place,
  type PlaceState,
  placeIn,
  placeOf,
  type SessionState,
  takesMat,
  type Waiting,
} from "./session-state.ts";
export { settleOffers } from "./settle-offers.ts";
