import { bad, good, type Problem, problem, type Result } from "#core/words";

export type Encoding = "UTF-8" | "UTF-16" | "Windows-1252";

export type Decoded = { readonly text: string; readonly encoding: Encoding };

/**
 * The text in a file's bytes: UTF-8 or UTF-16 by the mark at its beginning or by what stands there, else
 * Windows-1252, in which every byte is a letter. Runs in a browser as in Node.
 * Problems: "table-not-text" for a spreadsheet, a picture or another file that is no text; "table-empty".
 */
export function decodeText(bytes: Uint8Array): Result<Decoded> {
  const other = KINDS.find(([first]) => first.every((byte, at) => bytes[at] === byte));
  if (other !== undefined) return bad(notText(other[1]));
  const wide = wideEncoding(bytes);
  const decoded = wide === undefined ? decodeNarrow(bytes) : decodeAs(wide, "UTF-16", bytes);
  if (decoded === undefined || LOOKS_BINARY.test(decoded.text.slice(0, 4000))) return bad(notText("no text"));
  return decoded.text.trim() === "" ? bad(empty()) : good(decoded);
}

/** How files begin that are mistaken for a table of text. */
const KINDS: readonly (readonly [readonly number[], string])[] = [
  [[0x50, 0x4b, 0x03, 0x04], "a spreadsheet or another packed file"],
  [[0xd0, 0xcf, 0x11, 0xe0], "an old spreadsheet or another office file"],
  [[0x25, 0x50, 0x44, 0x46], "a PDF"],
  [[0x89, 0x50, 0x4e, 0x47], "a picture"],
  [[0xff, 0xd8, 0xff], "a picture"],
  [[0x1f, 0x8b], "a packed file"],
];

// Control signs that no text has; tab, line feed and carriage return it has.
// oxlint-disable-next-line no-control-regex -- these very signs are looked for
const LOOKS_BINARY = /[\u0000-\u0008\u000e-\u001a\u001c-\u001f]/;

/** By its mark, or by noughts at every other byte, as plain letters in UTF-16 have. */
function wideEncoding(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const start = bytes.subarray(0, 400);
  const noughts = [0, 1].map((odd) => start.filter((byte, at) => at % 2 === odd && byte === 0).length);
  const [even = 0, odd = 0] = noughts;
  if (odd > start.length / 3 && even === 0) return "utf-16le";
  return even > start.length / 3 && odd === 0 ? "utf-16be" : undefined;
}

function decodeNarrow(bytes: Uint8Array): Decoded | undefined {
  return decodeAs("utf-8", "UTF-8", bytes) ?? decodeAs("windows-1252", "Windows-1252", bytes);
}

function decodeAs(label: string, encoding: Encoding, bytes: Uint8Array): Decoded | undefined {
  try {
    return { text: new TextDecoder(label, { fatal: true }).decode(bytes), encoding };
  } catch {
    return undefined;
  }
}

function notText(what: string): Problem {
  const says = `The file is ${what === "no text" ? "no text" : `${what}, not a table of text`}.`;
  return problem("table-not-text", "", says, "Open it in its own program and save it as CSV.");
}

function empty(): Problem {
  const next = "Look whether it is the right file and whether it was saved whole.";
  return problem("table-empty", "", "The file is empty.", next);
}
