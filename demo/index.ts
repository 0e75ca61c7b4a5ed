export { cedarFork } from "./cedar-fork.ts";
export type { DemoPractice } from "./demo-practice.ts";
export { marlsford } from "./marlsford.ts";
