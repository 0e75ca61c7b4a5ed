import type { ProblemsAnswer } from "#app/ports";
import { type Problem, problem } from "#core/words";
import type { FastifyError, FastifyInstance, FastifyReply } from "fastify";
import { isProblemsError } from "./read-request.ts";

/** Problem codes that have a status of their own; every other problem is 422: understood, not usable. */
const statuses: Readonly<Record<string, number>> = {
  "not-found": 404,
  "no-such-route": 404,
  "feed-unknown": 404,
  "changed-elsewhere": 409,
  "action-reused": 409,
  "hall-in-use": 409,
  "foreign-host": 403,
  "foreign-page": 403,
  "request-unreadable": 400,
  "request-too-large": 413,
  "request-not-json": 415,
  "disk-full": 507,
  // not 502 to 504, by which a proxy says that there is no server behind it
  "store-busy": 423,
  "store-read-only": 500,
  "data-file-damaged": 500,
  "stored-document-unreadable": 500,
  unexpected: 500,
};

/** The status of an answer is that of its first problem. */
export function statusOf(problems: readonly Problem[]): number {
  return statuses[problems[0]?.code ?? "unexpected"] ?? 422;
}

export function answerProblems(reply: FastifyReply, problems: readonly Problem[]): FastifyReply {
  const answer: ProblemsAnswer = { problems };
  return reply.code(statusOf(problems)).type("application/json").send(JSON.stringify(answer));
}

/** Whatever goes wrong on the way is told as problems too, and never as a stack trace. */
export function problemsInsteadOfErrors(server: FastifyInstance, log: (error: unknown) => void): void {
  server.setErrorHandler((error: FastifyError, _request, reply) => {
    const problems = problemsOf(error);
    if (problems.some((it) => it.code === "unexpected")) log(error);
    return answerProblems(reply, problems);
  });
}

function problemsOf(error: FastifyError): readonly Problem[] {
  if (isProblemsError(error)) return error.problems;
  return [requestProblem(error) ?? unexpected()];
}

function requestProblem(error: FastifyError): Problem | undefined {
  switch (error.code) {
    case "FST_ERR_CTP_BODY_TOO_LARGE":
      return problem(
        "request-too-large",
        "",
        "This is more than Hallful takes at once.",
        "Send less than 1 MB.",
      );
    case "FST_ERR_CTP_INVALID_MEDIA_TYPE":
    case "FST_ERR_CTP_EMPTY_TYPE":
      return problem("request-not-json", "", "The request is not JSON.", "Send application/json.");
    default:
      if ((error.statusCode ?? 500) >= 500) return undefined;
      return problem(
        "request-unreadable",
        "",
        "The request cannot be read.",
        "Send JSON as /api/openapi.json tells.",
      );
  }
}

function unexpected(): Problem {
  const says = "Something went wrong in Hallful itself.";
  return problem(
    "unexpected",
    "",
    says,
    "Nothing was saved. Try again; if it stays, keep the log and tell us.",
  );
}
