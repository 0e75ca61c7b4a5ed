import { expect, test } from "vitest";
import { problem } from "#core/words";
import {
  acknowledged,
  changeDocument,
  changeTyped,
  dropTyped,
  heardVersion,
  keepMine,
  newDraft,
  notSaved,
  openDraft,
  startSending,
} from "./draft.ts";

const silent = problem("server-silent", "", "The server does not answer.", "Try again.");
const elsewhere = problem("changed-elsewhere", "", "It was changed.", "Choose.");
const full = problem("disk-full", "", "The disk is full.", "Make room.");

const sent = (action: string) => {
  const started = startSending(changeDocument(openDraft(3, "old"), "new"), action);
  if (started === null) throw new Error("nothing was sent");
  return started;
};

test("an opened document has nothing to send", () => {
  expect(startSending(openDraft(3, "old"), "a1")).toBeNull();
});

test("a change goes out from the version it was made from", () => {
  expect(sent("a1").sending).toEqual({ action: "a1", from: 3, document: "new" });
});

test("nothing else is sent while a save is on its way", () => {
  expect(startSending(sent("a1"), "a2")).toBeNull();
  expect(startSending(changeDocument(sent("a1"), "newer"), "a2")?.sending?.action).toBe("a1");
});

test("a save without an answer is repeated as it was, whatever was typed since", () => {
  const typedOn = changeDocument(notSaved(sent("a1"), [silent]), "newer");
  const again = startSending(typedOn, "a2");
  expect(again?.sending).toEqual({ action: "a1", from: 3, document: "new" });
  expect(again?.document).toBe("newer");
});

test("what was typed while a save was on its way goes out next, from the new version", () => {
  const typedOn = changeDocument(sent("a1"), "newer");
  const then = acknowledged(typedOn, 4, "2027-01-11T18:02:00Z");
  expect(then.state.kind).toBe("waiting");
  expect(startSending(then, "a2")?.sending).toEqual({ action: "a2", from: 4, document: "newer" });
});

test("an acknowledged save says when", () => {
  expect(acknowledged(sent("a1"), 4, "2027-01-11T18:02:00Z").state).toEqual({
    kind: "saved",
    at: "2027-01-11T18:02:00Z",
  });
});

test("a refused save keeps the document and may be sent again under a new id", () => {
  const refused = notSaved(sent("a1"), [full]);
  expect(refused.document).toBe("new");
  expect(startSending(refused, "a2")?.sending?.action).toBe("a2");
});

test("a clash holds still until she chooses", () => {
  const clash = notSaved(sent("a1"), [elsewhere]);
  expect(startSending(clash, "a2")).toBeNull();
  expect(changeDocument(clash, "newer").state.kind).toBe("clash");
  expect(startSending(keepMine(clash, 7), "a2")?.sending?.from).toBe(7);
});

test("a newer version of the server is taken when nothing here is unsent", () => {
  expect(heardVersion(openDraft(3, "old"), 4, "theirs").document).toBe("theirs");
});

test("the text of a bad field outlives a newer version of the server", () => {
  const bad = changeTyped(openDraft(3, "old"), "heads", "about nine");
  expect(heardVersion(bad, 4, "theirs")).toMatchObject({
    document: "theirs",
    typed: { heads: "about nine" },
  });
});

test("a newer version of the server is a clash when something here is unsent", () => {
  const draft = heardVersion(changeDocument(openDraft(3, "old"), "mine"), 4, "theirs");
  expect(draft.state.kind).toBe("clash");
  expect(draft.document).toBe("mine");
});

test("an older version of the server changes nothing", () => {
  const draft = openDraft(3, "old");
  expect(heardVersion(draft, 3, "theirs")).toBe(draft);
});

test("the text of a bad field is kept until the field is good", () => {
  const bad = changeTyped(openDraft(3, "old"), "heads", "about nine");
  expect(bad.typed).toEqual({ heads: "about nine" });
  expect(changeTyped(bad, "heads", null).typed).toEqual({});
});

test("a new document is waiting to be sent from version 0", () => {
  expect(startSending(newDraft("fresh"), "a1")?.sending?.from).toBe(0);
});

test("a row that is taken away takes the texts of its fields along, and no others", () => {
  const bad = changeTyped(changeTyped(openDraft(3, "old"), "passes[0].price", "x"), "heads", "y");
  expect(dropTyped(bad, "passes[").typed).toEqual({ heads: "y" });
});
