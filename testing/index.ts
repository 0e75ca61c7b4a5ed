export { aHall, aHallDocument } from "./a-hall.ts";
export { built } from "./built.ts";
export { comingPeople, type ComingPerson } from "./coming-people.ts";
export { oldDataFileVersion1 } from "./old-data-file.ts";
export { randomConvexFloors, randomHalls, randomLs, randomOutlines, randomRooms } from "./random-halls.ts";
export { storeContract } from "./store-contract.ts";
export { temporaryFolder } from "./temporary-folder.ts";
