import { bad, good, type Problem, problem, type Result } from "#core/words";

const ID = /^[a-z0-9][a-z0-9-]{0,63}$/;
const ACTION = /^[A-Za-z0-9-]{8,64}$/;

/** Every action names itself and, by id, what it is about. */
type Ids = { readonly action: string; readonly practice: string; readonly id?: string };

/** Problems: "id-unreadable", "action-unreadable". */
export function readIds(ids: Ids): Result<null> {
  const problems = [
    ...(ACTION.test(ids.action) ? [] : [actionUnreadable(ids.action)]),
    ...(ID.test(ids.practice) ? [] : [idUnreadable("practice", ids.practice)]),
    ...(ids.id === undefined || ID.test(ids.id) ? [] : [idUnreadable("id", ids.id)]),
  ];
  return problems.length === 0 ? good(null) : bad(...problems);
}

function idUnreadable(place: string, id: string): Problem {
  const next = "Use small letters, digits and hyphens, at most 64, like tithe-barn.";
  return problem("id-unreadable", place, `“${id.slice(0, 80)}” cannot be used as an id.`, next);
}

function actionUnreadable(action: string): Problem {
  const says = `“${action.slice(0, 80)}” cannot be used as the id of an action.`;
  const next = "Use 8 to 64 letters, digits and hyphens; a random UUID does well.";
  return problem("action-unreadable", "action", says, next);
}
