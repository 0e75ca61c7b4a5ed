export { type ActOrder, act, type Recorder } from "./act.ts";
export { type ActedOn, actOn } from "./act-on.ts";
export { listedAs, type Setting, stateAfter } from "./desk.ts";
export type { Told } from "./doing.ts";
export { type DoAsk, type DoAskInput, doAskSchema } from "./doings/index.ts";
export { type InTurn, turns } from "./in-turn.ts";
export { type EveningsOrder, readEvenings, readSessions } from "./read-evenings.ts";
export { readAll } from "./read-everybody.ts";
