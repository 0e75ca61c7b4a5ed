export { cutOff } from "./cut-off.ts";
export {
  type DeviceClock,
  type DeviceTimes,
  deviceClock,
  type MadeAt,
  madeAt,
} from "./device-clock.ts";
export { type NoticeAsked, type NoticeFound, noticeOf } from "./notice-of.ts";
export { type NoticeRule, readNoticeRule, usualNotice } from "./notice-rule.ts";
export { type HallCancelled, type HallCancels, hallCancels } from "./hall-cancels.ts";
export { type HallNotice, type HallNoticeAsked, type HallStep, hallNotice } from "./hall-notice.ts";
export { type ChargeReason, type LateAsked, type LateCharge, lateCharge } from "./late-charge.ts";
export { momentWords, spanWords } from "./moment-words.ts";
export { plainRuleWords } from "./rule-words.ts";
