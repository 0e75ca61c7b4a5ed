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
  savedHappenedContract,
  savedHallContract,
  savedPlanContract,
  savedPracticeContract,
  startContract,
} from "./contracts.ts";
export {
  type PersonExport,
  personExportContract,
  type SeenAnswer,
  seenContract,
} from "./person-export.ts";
export type { Papers } from "./papers.ts";
export {
  type Actor,
  type Appended,
  actors,
  type KeptEvent,
  type KeptPosting,
  type KeptStream,
  type ListOrder,
  type PostingsOrder,
  type RecordCommit,
  type RecordStore,
  type SealedWrite,
  type StreamKind,
  type StreamName,
  type StreamWrite,
  streamKinds,
} from "./record.ts";
export { type PlanDocument, planDocumentSchema, type PlanId, planIds } from "./plan.ts";
export type { Change, Commit, Kept, PracticeWhole, Store } from "./store.ts";
export type { Sealer } from "./sealer.ts";
export {
  type ActAsk,
  actContract,
  balancesContract,
  noteContract,
  postingsContract,
  type StreamsAnswer,
  streamsContract,
  toldContract,
} from "./record-contracts.ts";
