export {
  healthContract,
  type OpenPracticeAsk,
  openPracticeContract,
  type PracticeStart,
  type PracticesAnswer,
  type PracticeWholeAnswer,
  type ProblemsAnswer,
  practicesContract,
  practiceWholeContract,
  problemsContract,
  type RemoveAsk,
  removeContract,
  removedContract,
  type SaveAsk,
  type Saved,
  saveContract,
  savedClassContract,
  savedHallContract,
  savedPracticeContract,
  startContract,
} from "./contracts.ts";
export type { Papers } from "./papers.ts";
export type { Change, Commit, Kept, PracticeWhole, Store } from "./store.ts";
