/** Where a practice is kept unless somebody says otherwise: a folder that git does not look at. */
const USUAL = "data/hallful.sqlite";

type Environment = Readonly<Record<string, string | undefined>>;

/** The option comes before the environment, and that before the usual place. */
export function dataFileName(option: string | undefined, environment: Environment): string {
  return option ?? environment["HALLFUL_DATA"] ?? USUAL;
}
