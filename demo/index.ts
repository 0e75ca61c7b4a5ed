export { cedarFork } from "./cedar-fork.ts";
export type { DemoPractice } from "./demo-practice.ts";
export { marlsfordHistory } from "./history/marlsford-history.ts";
export { marlsford } from "./marlsford.ts";
