import { useId, useState } from "react";
import { healthQuestions } from "./health-topics.ts";

/** The questions with yes and no. The answers live in this part of the page only and go with it. */
export function HealthQuestions() {
  const [answers, setAnswers] = useState<Readonly<Record<string, "yes" | "no">>>({});
  const name = useId();
  const yes = healthQuestions.filter(({ topic }) => answers[topic] === "yes");
  return (
    <div>
      {healthQuestions.map(({ topic, asks }) => (
        <fieldset key={topic} className="health-question">
          <legend>{asks}</legend>
          <div className="row">
            {(["yes", "no"] as const).map((it) => (
              <label key={it} className="choice">
                <input
                  type="radio"
                  name={`${name} ${topic}`}
                  checked={answers[topic] === it}
                  onChange={() => setAnswers({ ...answers, [topic]: it })}
                />
                {it}
              </label>
            ))}
          </div>
        </fieldset>
      ))}
      <output className="people-note">
        {yes.length === 0
          ? "Nothing is answered with yes."
          : `To talk about: ${yes.map(({ topic }) => topic).join(", ")}.`}
      </output>
    </div>
  );
}
