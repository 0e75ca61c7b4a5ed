export { aHall, aHallDocument } from "./a-hall.ts";
export { randomConvexFloors, randomHalls, randomLs, randomOutlines, randomRooms } from "./random-halls.ts";
