import { z } from "zod";
import type { Doing } from "../doing.ts";
import { addToAccident, writeAccident } from "./accident.ts";
import { leaveList, settleList, takeOffer } from "./answer-waiting.ts";
import { cancelSession } from "./cancel-session.ts";
import { changePass } from "./change-pass.ts";
import { writeCost } from "./cost.ts";
import { coverSession } from "./cover-session.ts";
import { giveUp } from "./give-up.ts";
import { markEverybody } from "./mark-everybody.ts";
import { mergeSessions } from "./merge-sessions.ts";
import { moveSession } from "./move-session.ts";
import { openSessions } from "./open-sessions.ts";
import { changeContact, erasePerson, giveConsent, healthForm, mayCover, meetPerson } from "./person.ts";
import { giveMoneyBack, payPlace } from "./place-money.ts";
import { closeTheRegister, countHeads, markRegister } from "./register.ts";
import { sellPass } from "./sell-pass.ts";
import { takePlace } from "./take-place.ts";
import { countCash, moveMoney, ownMoney } from "./till.ts";
import { walkIn } from "./walk-in.ts";
import { writeWork } from "./work.ts";

/** Everything that can be done with the record, by the kind in which it is asked for. */
const doings = {
  "open sessions": openSessions,
  "move session": moveSession,
  "merge sessions": mergeSessions,
  "cancel session": cancelSession,
  "cover session": coverSession,
  "take place": takePlace,
  "take offer": takeOffer,
  "leave waiting list": leaveList,
  "settle waiting list": settleList,
  "give up place": giveUp,
  mark: markRegister,
  "mark everybody": markEverybody,
  "walk in": walkIn,
  "count heads": countHeads,
  "close register": closeTheRegister,
  "pay place": payPlace,
  "give money back": giveMoneyBack,
  "write cost": writeCost,
  "write work": writeWork,
  "count cash": countCash,
  "own money": ownMoney,
  "move money": moveMoney,
  "sell pass": sellPass,
  "change pass": changePass,
  "meet person": meetPerson,
  "change contact": changeContact,
  consent: giveConsent,
  "health form": healthForm,
  "may cover": mayCover,
  "erase person": erasePerson,
  "write accident": writeAccident,
  "add to accident": addToAccident,
} as const;

export const doAskSchema = z.discriminatedUnion("kind", [
  openSessions.ask,
  moveSession.ask,
  mergeSessions.ask,
  cancelSession.ask,
  coverSession.ask,
  takePlace.ask,
  takeOffer.ask,
  leaveList.ask,
  settleList.ask,
  giveUp.ask,
  markRegister.ask,
  markEverybody.ask,
  walkIn.ask,
  countHeads.ask,
  closeTheRegister.ask,
  payPlace.ask,
  giveMoneyBack.ask,
  writeCost.ask,
  writeWork.ask,
  countCash.ask,
  ownMoney.ask,
  moveMoney.ask,
  sellPass.ask,
  changePass.ask,
  meetPerson.ask,
  changeContact.ask,
  giveConsent.ask,
  healthForm.ask,
  mayCover.ask,
  erasePerson.ask,
  writeAccident.ask,
  addToAccident.ask,
]);

export type DoAsk = z.output<typeof doAskSchema>;
/** As it is sent: what has a usual value may be left out. */
export type DoAskInput = z.input<typeof doAskSchema>;

/** The doing of an ask. */
export function doingOf(ask: DoAsk): Doing<z.ZodType<DoAsk>> {
  return doings[ask.kind];
}
