export { acceptAtMost, type Accepting, chanceOver, type OpeningRoom } from "./opening/accept-at-most.ts";
export { type Together, turnUpOf } from "./opening/turn-up.ts";
