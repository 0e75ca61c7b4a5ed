export { checkClass } from "./check-class.ts";
export { checkHall } from "./check-hall.ts";
export { type OpenPracticeOrder, openPractice, type PracticeStartDocuments } from "./open-practice.ts";
export { readPractice } from "./read-practice.ts";
export { removeClass } from "./remove-class.ts";
export { type RemoveAskOf, removeHall } from "./remove-hall.ts";
export { saveClass } from "./save-class.ts";
export { type SaveAskOf, saveHall } from "./save-hall.ts";
export { type SavePracticeAsk, savePractice } from "./save-practice.ts";
