export { type Breach, checkAnswer } from "./check-answer.ts";
export { loadSolver, type SolverFiles } from "./load-solver.ts";
export type { Answer, Basis, Column, Limits, Outcome, Programme, Row, Solver } from "./programme.ts";
