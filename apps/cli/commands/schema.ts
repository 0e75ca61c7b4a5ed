import { bad, good, problem } from "#core/words";
import type { Command } from "../command.ts";
import { nearest } from "../nearest.ts";
import { publishedSchema, schemaNames } from "../published-schema.ts";

export const schema: Command = {
  name: "schema",
  summary: "the JSON Schema of a document, like a hall or an evening",
  words: ["KIND"],
  options: {},
  details: `
KIND is ${schemaNames.join(", ")}.
Draft 2020-12. What it leaves open, Hallful still looks at: that a floor does not
cross itself, that shares add to one, that amounts are money.`,
  run: async ({ words: [name = ""] }) => {
    const found = publishedSchema(name);
    if (found === undefined) return bad(unknown(name));
    return good({ text: `${JSON.stringify(found, null, 2)}\n`, json: found });
  },
};

function unknown(name: string) {
  const near = nearest(name, schemaNames);
  const next = near === undefined ? `There are: ${schemaNames.join(", ")}.` : `Did you mean ${near}?`;
  return problem("schema-unknown", "", `There is no schema of “${name.slice(0, 40)}”.`, next);
}
