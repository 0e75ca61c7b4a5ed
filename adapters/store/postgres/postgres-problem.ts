import { type Problem, problem } from "#core/words";
import { practiceNotThere } from "../data-file-problems.ts";

/** Codes of PostgreSQL (https://www.postgresql.org/docs/current/errcodes-appendix.html) by what they mean to her. */
const FULL = new Set(["53100"]);
const UNWRITABLE = new Set(["25006", "42501"]);
const BUSY = new Set(["55P03", "57014", "53000", "53200", "53300", "57P03"]);
const CROSSED = new Set(["40001", "40P01"]);
const DAMAGED = new Set(["XX001", "XX002"]);
const REFUSED = new Set(["28000", "28P01", "3D000", "3F000"]);
/** 57P: the server is being stopped or has fallen over. */
const LOST = new Set(["57P01", "57P02", "57P04", "57P05"]);

const CUT = new Set(["ECONNRESET", "EPIPE"]);
const CUT_IN_WORDS = /connection terminated( unexpectedly)?$|connection error and is not queryable/i;

/** Codes of the network and of sockets. */
const NO_WAY = new Set([
  "ECONNREFUSED",
  "ECONNRESET",
  "EHOSTUNREACH",
  "ENETUNREACH",
  "ENOENT",
  "ENOTFOUND",
  "EAI_AGAIN",
  "EPIPE",
  "ETIMEDOUT",
]);

/** What the client library says without a code. */
const LOST_IN_WORDS =
  /connection (terminated|timeout|error)|timeout exceeded when trying to connect|connection is closed/i;
const REFUSED_IN_WORDS = /^SASL|password must be|does not support SSL/;

/** The problem behind an error of PostgreSQL or of the way to it; undefined for an error that is a fault of ours. */
export function postgresProblem(error: unknown, where: string): Problem | undefined {
  const code = codeOf(error);
  const message = error instanceof Error ? error.message : "";
  if (FULL.has(code)) return diskFull(where);
  if (UNWRITABLE.has(code)) return readOnly(where);
  if (BUSY.has(code) || CROSSED.has(code)) return busy(where);
  if (DAMAGED.has(code)) return damaged(where);
  if (code === "23503") return practiceNotThere();
  if (REFUSED.has(code)) return refused(where, message);
  if (LOST.has(code) || NO_WAY.has(code) || code.startsWith("08")) return unreachable(where);
  if (code !== "") return undefined;
  if (LOST_IN_WORDS.test(message)) return unreachable(where);
  return REFUSED_IN_WORDS.test(message) ? refused(where, message) : undefined;
}

/** Transactions that cross each other five times running are too many. */
const MOST_CROSSINGS = 5;

/** A pool may hold several connections that a restarted server has forgotten, each found out by being used. */
const MOST_CUTS = 12;

/**
 * Two that crossed each other: the server undid one of them, and done again it finds its way. A connection that was
 * cut is replaced at once; where nobody listens there is no use in asking on.
 */
export function pauseBeforeNext(error: unknown, tries: number): number | null {
  if (CROSSED.has(codeOf(error))) return tries < MOST_CROSSINGS ? tries : null;
  return isCut(error) && tries < MOST_CUTS ? tries : null;
}

/** Whether the connection was there before: a server that is stopping, or a socket that closed under a statement. */
function isCut(error: unknown): boolean {
  const code = codeOf(error);
  const message = error instanceof Error ? error.message : "";
  return LOST.has(code) || CUT.has(code) || (code === "" && CUT_IN_WORDS.test(message));
}

function codeOf(error: unknown): string {
  if (!(error instanceof Error)) return "";
  // a name with several addresses, each of which refused
  if (error instanceof AggregateError && error.errors.length > 0) return codeOf(error.errors[0]);
  return "code" in error && typeof error.code === "string" ? error.code : "";
}

function diskFull(where: string): Problem {
  const says = `There is no room left on the disk for ${where}.`;
  const next = "Nothing was saved and nothing before it was lost. Make room, then save again.";
  return problem("disk-full", "data", says, next);
}

function readOnly(where: string): Problem {
  const says = `Hallful may not write in ${where}.`;
  const next = "Give its user the right to write there, or wait until the server takes writing again.";
  return problem("store-read-only", "data", says, next);
}

function busy(where: string): Problem {
  const says = `Others are holding ${where}.`;
  return problem("store-busy", "data", says, "Nothing was changed. Wait a moment, then try again.");
}

function damaged(where: string): Problem {
  const says = `A part of ${where} is damaged.`;
  const next = "Nothing was changed in it. Keep it as it is, and restore the last backup of the server.";
  return problem("data-file-damaged", "data", says, next);
}

/** The server's own words name the user or the database and never the password. */
function refused(where: string, message: string): Problem {
  const says = `There is no way into ${where}: ${message.replace(/\.?$/, ".")}`;
  return problem(
    "database-refused",
    "DATABASE_URL",
    says,
    "Look at the user, the password and the name in it.",
  );
}

function unreachable(where: string): Problem {
  const says = `The connection to ${where} is not there or was lost.`;
  const next = "Look whether the server runs, then do it again: what was done already is not done twice.";
  return problem("database-unreachable", "data", says, next);
}
