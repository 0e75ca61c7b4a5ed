import { accidentFactsSchema } from "#core/roll";
import { bad, good, problem } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { idSchema } from "./ask-parts.ts";

const write = z
  .object({ kind: z.literal("write accident"), accident: idSchema, facts: accidentFactsSchema })
  .describe("Somebody was hurt: the facts are written down and locked.");

export const writeAccident = doing({
  ask: write,
  needs: ({ accident }) => [`accident/${accident}`],
  decide: ({ accident, facts }, desk) => {
    if (desk.accident(accident) !== undefined) return bad(locked());
    desk.tellAccident(accident, { kind: "written", facts });
    const says = [
      "Written down and locked. More can be added, nothing changed.",
      "Tell the insurer, and the hall if the building or its kit played a part. Whether it must be reported to an authority is theirs to say: look at the rules where you teach.",
    ];
    return good({ says });
  },
});

function locked() {
  const says = "This accident is written down already, and what is written stays.";
  return problem("accident-locked", "accident", says, "Add what is missing to it.");
}

const add = z
  .object({
    kind: z.literal("add to accident"),
    accident: idSchema,
    text: z.string().trim().min(1).max(4000),
  })
  .describe("Something is added to an accident record, with its time.");

export const addToAccident = doing({
  ask: add,
  needs: ({ accident }) => [`accident/${accident}`],
  decide: ({ accident, text }, desk) => {
    if (desk.accident(accident) === undefined) return bad(unknown());
    desk.tellAccident(accident, { kind: "added", text });
    return good({ says: ["Added, with its time."] });
  },
});

function unknown() {
  const says = "There is no such accident record.";
  return problem("accident-unknown", "accident", says, "Write it down first.");
}
