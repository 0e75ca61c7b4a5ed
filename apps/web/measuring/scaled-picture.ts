import { bad, good, problem, type Result } from "#core/words";

export type ScaledPicture = { readonly picture: Blob; readonly width: number; readonly height: number };

/** The longer side in picture points: over a hall of 20 m a point is then 1 cm, and a picture is some 500 kB. */
const LONGEST = 2000;
/** More is no photograph. Bytes. */
const LARGEST = 60_000_000;

/**
 * A chosen picture, upright, no larger than is needed to mark corners on. Problems: "picture-too-large",
 * "picture-unreadable".
 */
export async function scaledPicture(file: Blob & { readonly name: string }): Promise<Result<ScaledPicture>> {
  if (file.size > LARGEST) {
    const says = `“${file.name}” has ${Math.round(file.size / 1e6)} MB.`;
    return bad(problem("picture-too-large", "picture", says, "Choose a picture of up to 60 MB."));
  }
  try {
    const bitmap = await createImageBitmap(file);
    const share = Math.min(1, LONGEST / Math.max(bitmap.width, bitmap.height));
    const [width, height] = [bitmap.width, bitmap.height].map((it) => Math.max(1, Math.round(it * share)));
    const picture = await drawn(bitmap, width ?? 1, height ?? 1);
    return picture === null
      ? bad(unreadable(file.name))
      : good({ picture, width: width ?? 1, height: height ?? 1 });
  } catch {
    return bad(unreadable(file.name));
  }
}

async function drawn(bitmap: ImageBitmap, width: number, height: number): Promise<Blob | null> {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")?.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  return new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.9));
}

function unreadable(name: string) {
  const says = `“${name}” is no picture that this browser can read.`;
  return problem(
    "picture-unreadable",
    "picture",
    says,
    "Take a photo here, or choose a JPEG or PNG picture.",
  );
}
