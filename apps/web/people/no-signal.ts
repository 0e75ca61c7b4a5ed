import { type Problem, problem } from "#core/words";

/** What a silent server means here: these pages ask the server for people each time, and what is typed about them is on no disk before. */
export function withSignalWords(problems: readonly Problem[]): readonly Problem[] {
  return problems.map((it) => (it.code === "server-silent" ? noSignal() : it));
}

function noSignal(): Problem {
  const says = "There is no signal, or the server does not answer.";
  const next = "What you typed stays in its fields. Try again when there is signal.";
  return problem("people-need-signal", "", says, next);
}
