/**
 * Where a figure comes from. The mark says how sure that is: a figure from memory has to be looked up in the edition
 * that holds where the hall stands before anybody relies on it.
 */
export type FigureSource = {
  readonly title: string;
  readonly edition: string;
  readonly table: string;
  /** where the document holds, if it holds at all */
  readonly country: "England" | "United States";
  readonly mark: "from memory" | "seen in a public occupant-load sheet, and from memory";
};

/** How many square metres of floor one person takes, for what a room is used for. */
export type FloorSpaceFigure = {
  readonly use: string;
  readonly squareMetresPerPerson: number;
  /** gross: within the walls; net: less what stands on it; where the table does not say it is null */
  readonly basis: "gross" | "net" | null;
  readonly source: FigureSource;
};

/** How many people may rely on an exit of a width in millimetres. */
export type ExitFigure = {
  readonly rule: string;
  readonly people: ExitRule;
  readonly source: FigureSource;
};

export type ExitRule =
  /** exits are counted one by one: the last step that the width reaches, or so many millimetres a person beyond */
  | {
      readonly kind: "each exit";
      readonly steps: readonly { readonly width: number; readonly people: number }[];
      readonly millimetresPerPersonBeyond: number;
      /** with one exit there may be no more than these */
      readonly mostWithOneExit: number;
    }
  /** the widths of all exits are added up */
  | { readonly kind: "total width"; readonly millimetresPerPerson: number };

const approvedDocumentB = {
  title: "Approved Document B, volume 2",
  edition: "2019",
  country: "England",
  mark: "from memory",
} as const;
const buildingCode = {
  title: "International Building Code",
  edition: "2021",
  country: "United States",
} as const;
const lifeSafetyCode = {
  title: "NFPA 101",
  edition: "edition not looked up",
  table: "table 7.3.1.2",
  country: "United States",
  mark: "from memory",
} as const;

/** A square foot is 0.0929 m²: 15 are 1.39 m² and 50 are 4.65 m², as the tables print them. */
export const floorSpaceFigures: readonly FloorSpaceFigure[] = [
  {
    use: "assembly hall or dance floor, standing",
    squareMetresPerPerson: 0.5,
    basis: null,
    source: { ...approvedDocumentB, table: "table D1" },
  },
  {
    use: "assembly with tables and chairs",
    squareMetresPerPerson: 1.39,
    basis: "net",
    source: { ...buildingCode, table: "table 1004.5", mark: "from memory" },
  },
  {
    use: "exercise room",
    squareMetresPerPerson: 4.65,
    basis: "gross",
    source: {
      ...buildingCode,
      table: "table 1004.5",
      mark: "seen in a public occupant-load sheet, and from memory",
    },
  },
  {
    use: "exercise room without equipment",
    squareMetresPerPerson: 1.39,
    basis: "net",
    source: lifeSafetyCode,
  },
  {
    use: "exercise room with equipment",
    squareMetresPerPerson: 4.65,
    basis: "gross",
    source: lifeSafetyCode,
  },
];

/** 0.2 inches a person are 5.08 mm. */
export const exitFigures: readonly ExitFigure[] = [
  {
    rule: "0.75 m for 60 people, 0.85 m for 110, 1.05 m for 220, more at 5 mm a person; one exit for 60 at most",
    people: {
      kind: "each exit",
      steps: [
        { width: 750, people: 60 },
        { width: 850, people: 110 },
        { width: 1050, people: 220 },
      ],
      millimetresPerPersonBeyond: 5,
      mostWithOneExit: 60,
    },
    source: { ...approvedDocumentB, table: "tables 2.2 and 2.3" },
  },
  {
    rule: "0.2 inches a person on the level",
    people: { kind: "total width", millimetresPerPerson: 5.08 },
    source: { ...buildingCode, table: "1005.3.2", mark: "from memory" },
  },
];
