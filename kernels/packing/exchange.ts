import { uniformInt } from "pure-rand/distribution/uniformInt";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import type { Laid } from "./laid.ts";
import { eachNear, nearestPlace, type Places } from "./places-of.ts";

/**
 * A search over fixed places: one is taken by force, those in its way go, what has become free is taken, and
 * wherever two can stand instead of one they do (Andrade, Resende and Werneck 2012, for sets of which no two
 * may meet). Counting how many of the plan stand in the way of each place makes each of these steps one look at the
 * places near by.
 */
export type Exchange = {
  readonly places: Places;
  readonly random: RandomGenerator;
  /** how many of the plan are too near each place; one of the plan counts itself */
  readonly near: Uint8Array;
  /** the places of the plan that are too near each place, added up: where it is one alone, that one */
  readonly who: Int32Array;
  /** the try at which each place was last taken or given up */
  readonly changed: Int32Array;
  readonly taken: number[];
  /** what has been done since the try began: index of a place taken, or ~index of one given up */
  readonly done: number[];
  readonly free: number[];
  /** those of the plan around which something has come to be in the way of one alone */
  readonly dirty: Set<number>;
  /** which way the plan is drawn, or null while it wanders */
  drift: { readonly x: number; readonly y: number } | null;
  tries: number;
  best: readonly Laid[];
};

export function startExchange(places: Places, random: RandomGenerator): Exchange {
  const exchange: Exchange = {
    places,
    random,
    near: new Uint8Array(places.size),
    who: new Int32Array(places.size),
    changed: new Int32Array(places.size),
    taken: [],
    done: [],
    free: [],
    dirty: new Set(),
    drift: null,
    tries: 0,
    best: [],
  };
  return exchange;
}

/** Goes on from another plan: each of its rectangles at the nearest place, and what is free filled up. */
export function exchangeFrom(exchange: Exchange, laid: readonly Laid[]): void {
  for (const index of exchange.taken.slice()) giveUp(exchange, index);
  for (const each of laid) {
    const index = nearestPlace(exchange.places, each);
    if (index !== null && exchange.near[index] === 0) take(exchange, index);
  }
  exchange.free.length = 0;
  for (let index = 0; index < exchange.places.size; index++)
    if (exchange.near[index] === 0) exchange.free.push(index);
  takeFree(exchange);
  if (exchange.taken.length > exchange.best.length) keepBest(exchange);
}

export function exchangeTries(exchange: Exchange, tries: number): void {
  if (exchange.places.size === 0) return;
  for (let attempt = 0; attempt < tries; attempt++) oneTry(exchange);
}

function oneTry(exchange: Exchange): void {
  const { taken, done, random, best } = exchange;
  const before = taken.length;
  done.length = 0;
  exchange.free.length = 0;
  exchange.dirty.clear();
  if (exchange.tries++ % PHASE === 0) setDrift(exchange);
  force(exchange, chosen(exchange));
  takeFree(exchange);
  twoForOne(exchange);
  const lost = before - taken.length;
  if (taken.length > best.length) keepBest(exchange);
  if (lost > 0 && uniformInt(random, 0, 1 + lost * (best.length - taken.length)) !== 0) undo(exchange);
}

const PHASE = 200;
const DRAWN = 12;

function setDrift(exchange: Exchange): void {
  const { random, tries } = exchange;
  const way = (): number => 2 * uniformInt(random, 0, 1) - 1;
  exchange.drift = Math.floor(tries / PHASE) % 2 === 0 ? null : { x: way(), y: way() };
}

/**
 * Of a few drawn places that with the fewest in its way; of equal ones that which is furthest along the drift, or
 * has rested longest.
 */
function chosen(exchange: Exchange): number {
  const { places, near, changed, random } = exchange;
  let [best, cost, rank] = [0, Infinity, Infinity];
  const mixed = uniformInt(random, 0, 3) === 0 ? 2 : 1;
  for (let draw = 0; draw < DRAWN; draw++) {
    const index = uniformInt(random, 0, places.size - 1);
    const inWay = Math.max(mixed, near[index]!);
    if (inWay > cost || exchange.who[index] === index) continue;
    const its = exchange.drift === null ? changed[index]! : driftOf(exchange, index);
    if (inWay < cost || its < rank) [best, cost, rank] = [index, inWay, its];
  }
  return best;
}

/** How much less far along the drift it is than what is in its way. */
function driftOf({ places, near, who, drift }: Exchange, index: number): number {
  if (near[index] !== 1 || drift === null) return Infinity;
  const { xs, ys, turns, space } = places;
  const other = who[index]!;
  const [one, its] = [space.turns[turns[index]!]!, space.turns[turns[other]!]!];
  const right = xs[other]! - xs[index]! + (its.width - one.width) / 2;
  const up = ys[other]! - ys[index]! + (its.height - one.height) / 2;
  return drift.x * right + drift.y * up;
}

function force(exchange: Exchange, index: number): void {
  for (const other of inWayOf(exchange, index)) giveUp(exchange, other);
  take(exchange, index);
}

function inWayOf({ places, taken }: Exchange, index: number): readonly number[] {
  return taken.filter((other) => clashing(places, index, other));
}

function clashing({ space, turns, xs, ys }: Places, a: number, b: number): boolean {
  const [one, other] = [space.turns[turns[a]!]!, space.turns[turns[b]!]!];
  const across = Math.abs(2 * (xs[a]! - xs[b]!) + one.width - other.width);
  if (across >= one.width + one.gapX + other.width + other.gapX - 2e-5) return false;
  const up = Math.abs(2 * (ys[a]! - ys[b]!) + one.height - other.height);
  return up < one.height + one.gapY + other.height + other.gapY - 2e-5;
}

function takeFree(exchange: Exchange): void {
  const { free, near, random } = exchange;
  while (free.length > 0) {
    const at = uniformInt(random, 0, free.length - 1);
    const index = free[at]!;
    free[at] = free.at(-1)!;
    free.pop();
    if (near[index] === 0) take(exchange, index);
  }
}

/** Each of the plan that may now stand alone in the way of two that suit each other. */
function twoForOne(exchange: Exchange): void {
  const { dirty, near, who } = exchange;
  for (const one of dirty) {
    dirty.delete(one);
    if (near[one] !== 1 || who[one] !== one) continue;
    const pair = pairInsteadOf(exchange, one);
    if (pair === null) continue;
    giveUp(exchange, one);
    take(exchange, pair[0]);
    take(exchange, pair[1]);
    takeFree(exchange);
  }
}

/**
 * Two rectangles lie apart when one ends before the other begins, so of all places for which only this one stands in
 * the way the one that ends first and the one that begins last are looked at, across and upwards.
 */
function pairInsteadOf({ places, near }: Exchange, one: number): readonly [number, number] | null {
  const { space, turns, xs, ys } = places;
  let [leftmost, rightmost, lowest, highest] = [-1, -1, -1, -1];
  let [right, left, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  eachNear(places, turns[one]!, xs[one]!, ys[one]!, (from, to) => {
    for (let i = from; i < to; i++) {
      if (near[i] !== 1 || i === one) continue;
      const turn = space.turns[turns[i]!]!;
      const [x0, y0] = [xs[i]! - turn.gapX / 2, ys[i]! - turn.gapY / 2];
      const [x1, y1] = [x0 + turn.width + turn.gapX, y0 + turn.height + turn.gapY];
      if (x1 < right) [right, leftmost] = [x1, i];
      if (x0 > left) [left, rightmost] = [x0, i];
      if (y1 < top) [top, lowest] = [y1, i];
      if (y0 > bottom) [bottom, highest] = [y0, i];
    }
  });
  if (left >= right - 1e-5) return [leftmost, rightmost];
  return bottom >= top - 1e-5 ? [lowest, highest] : null;
}

function take(exchange: Exchange, index: number): void {
  const { places, near, who, taken, changed, done, dirty } = exchange;
  eachNear(places, places.turns[index]!, places.xs[index]!, places.ys[index]!, (from, to) => {
    for (let i = from; i < to; i++) {
      near[i]!++;
      who[i]! += index;
    }
  });
  taken.push(index);
  dirty.add(index);
  changed[index] = exchange.tries;
  done.push(index);
}

function giveUp(exchange: Exchange, index: number): void {
  const { places, near, who, taken, changed, done, free, dirty } = exchange;
  eachNear(places, places.turns[index]!, places.xs[index]!, places.ys[index]!, (from, to) => {
    for (let i = from; i < to; i++) {
      who[i]! -= index;
      if (--near[i]! === 0) free.push(i);
      else if (near[i] === 1) dirty.add(who[i]!);
    }
  });
  taken.splice(taken.indexOf(index), 1);
  changed[index] = exchange.tries;
  done.push(~index);
}

function undo(exchange: Exchange): void {
  const { done, free } = exchange;
  const steps = done.toReversed();
  for (const step of steps)
    if (step >= 0) giveUp(exchange, step);
    else take(exchange, ~step);
  free.length = 0;
}

function keepBest(exchange: Exchange): void {
  const { turns, xs, ys } = exchange.places;
  exchange.best = exchange.taken.map((index) => ({
    turn: turns[index] === 0 ? 0 : 1,
    x: xs[index]!,
    y: ys[index]!,
  }));
}
