import { problem } from "#core/words";
import { expect, test } from "vitest";
import { surveyProblem } from "./survey-problem.ts";

test("a line of a survey is counted from one", () => {
  const third = problem("currencies-mixed", "planning.survey[2].price", "It is in dollars.", "Leave it out.");
  expect(surveyProblem([third])).toBe("Line 3: It is in dollars. Leave it out.");
});

test("problems of other places are not the survey's", () => {
  const other = problem("curve-one-point", "planning.beliefs", "There is only one.", "Add another.");
  expect(surveyProblem([other])).toBe(null);
  const long = problem("survey-too-long", "planning.survey", "It is long.", "Shorten it.");
  expect(surveyProblem([other, long])).toBe("It is long. Shorten it.");
});
