export type HealthQuestion = { readonly topic: string; readonly asks: string };

/** Our own questions, to be read together; common practice in what they cover, no source. Nobody is cleared by them. */
export const healthQuestions: readonly HealthQuestion[] = [
  {
    topic: "heart or blood pressure",
    asks: "Is anything the matter with your heart or your blood pressure?",
  },
  { topic: "dizziness", asks: "Do you feel dizzy or faint at times, lying down or getting up?" },
  { topic: "joints or back", asks: "Does a joint or your back hurt, or was one operated on?" },
  { topic: "bones", asks: "Were you told that your bones are thin or break easily?" },
  { topic: "eyes", asks: "Is the pressure in your eyes high, or was an eye treated lately?" },
  { topic: "blood sugar", asks: "Do you have diabetes, or does your blood sugar drop?" },
  { topic: "fits", asks: "Have you ever had a fit or a seizure?" },
  { topic: "breathing", asks: "Do you have asthma, or does your breath run short?" },
  { topic: "pregnancy or a birth", asks: "Are you pregnant, or did you give birth in the last year?" },
  { topic: "an injury", asks: "Did you hurt yourself in the last three months?" },
  { topic: "medicine", asks: "Do you take anything that makes you sleepy or unsteady?" },
  { topic: "something else", asks: "Is there anything else that your teacher should know?" },
];
