import { type Problem, problem } from "#core/words";
import { newestVersion } from "./migrations.ts";

export function readOnly(file: string): Problem {
  const says = `The data file ${file} cannot be written here.`;
  const next = "Make the file and its folder writable, or name another file with --data.";
  return problem("store-read-only", "data", says, next);
}

export function damaged(file: string, how: string): Problem {
  const says = `The data file ${file} is damaged: ${how}.`;
  const next = "Nothing was changed in it. Keep it, and restore your last backup with hallful restore.";
  return problem("data-file-damaged", "data", says, next);
}

export function foreign(file: string, how: string): Problem {
  const next = "Nothing was changed in it. Name your own data file with --data, or a new one.";
  return problem("data-file-foreign", "data", `${file} ${how}.`, next);
}

export function missing(file: string): Problem {
  const next = "Look whether the name is right; --data names the file.";
  return problem("data-file-missing", "data", `There is no file ${file}.`, next);
}

export function newer(file: string, version: number): Problem {
  const says = `The data file ${file} was written by a newer Hallful (version ${version} of the file).`;
  const next = `Nothing was changed in it. Use the newer Hallful; this one knows up to version ${newestVersion()}.`;
  return problem("data-file-newer", "data", says, next);
}

export function practiceNotThere(): Problem {
  const says = "There is no such practice here; it may have been opened in another data file.";
  return problem("not-found", "practice", says, "Open the practice first, then save again.");
}
