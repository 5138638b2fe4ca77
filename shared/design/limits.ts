/**
 * Every cap of the studio, with its reason. A cap is a promise: what lies within it works fluently, what lies
 * beyond is refused with a sentence before memory is taken. Each has a test at the cap and one above it.
 */
export const limits = {
  /** Cords (columns) of one chart. At 4 mm a cord this is a hanging four metres wide. */
  columns: 1000,
  /** Rows of one chart. */
  rows: 2000,
  /** Cells in all layers together, one byte each in memory. */
  cells: 16_000_000,
  /** Layers of one design. */
  layers: 64,
  /** Yarns of one design: as many as there are symbols in the alphabet. */
  yarns: 64,
  /** Pins of one design: more than a hand sets, few enough to be read at each plan. */
  pins: 1000,
  /** Bundles of one design that are cut: several lengths of every yarn; more than anybody would tick one by one. */
  cutBundles: 1000,
  /** Swatches of one design. */
  swatches: 64,
  /** Bytes of one design file: 16 million cells of which no two neighbours are alike take 80 MB, and must be saved. */
  fileBytes: 96 * 1024 * 1024,
  /** Values in a design file, counted before it is parsed; 64 layers of 2000 rows are 128,000. */
  fileValues: 1_000_000,
  /** Nesting of a design file, so that no parser runs out of stack. */
  fileDepth: 32,
  /** Characters of one string in a design file, rows of cells excepted. */
  stringChars: 65_536,
  /** Characters of a name: title, yarn, layer, designer. */
  nameChars: 200,
  /** Characters of a text drawn in cells: in the smallest letters 200 of them cross a chart of 800 cords. */
  textChars: 200,
  /** Pixels of a picture to import, read from its header before it is decoded. */
  picturePixels: 40_000_000,
  /** Bytes of a picture file to import. */
  pictureBytes: 64 * 1024 * 1024,
  /** Bytes of the picture that lies under a chart: 1600 pixels a side take one or two million. */
  referenceBytes: 4 * 1024 * 1024,
  /** Characters of one line of its base64, well within `stringChars`; a multiple of 4. */
  referenceLineChars: 60_000,
  /** Lines of its base64: twice as many as full lines of the largest picture need. */
  referenceLines: 200,
  /** Cells across the widest nib: as wide as a drawing hand needs, and quick enough to follow it. */
  nibCells: 32,
  /** Yarns of the stash: more than a shelf holds, few enough to be listed and compared in colour at once. */
  stashYarns: 500,
  /** Characters of the notes of one yarn of the stash: a label and a remark, so that the file stays small. */
  stashNoteChars: 2000,
  /** Motifs that are kept: all of them are listed at once. */
  motifs: 500,
  /** Bytes of one motif's file: two million cells of which no two neighbours are alike take 10 MB. */
  motifBytes: 16 * 1024 * 1024,
  /** Bytes of the stash's file: its yarns with all their notes take at most 5 MB. */
  stashBytes: 8 * 1024 * 1024,
  /** Bytes of a picture that is taken to lie under a chart: as it looks on the screen, and light in every save. */
  referenceTakenBytes: 2 * 1024 * 1024,
  /** Bytes of the designer's mark: a small picture, which stands in every copy of every pattern. */
  markBytes: 300_000,
  /** Bytes of a pattern that is opened for the design inside it: the largest design, packed, and its pages. */
  patternBytes: 128 * 1024 * 1024,
  /** Bytes of the imprint's file: the mark in base64, and some texts. */
  imprintBytes: 1024 * 1024,
  /** Editions of one pattern: each keeps a chart and its plan in the design's file. */
  editions: 20,
  /** Characters of all editions as JSON: beside the largest chart they still fit into a file that can be saved. */
  editionsChars: 15_000_000,
  /** Errata of one edition: with more of them it is time for the next. */
  errata: 100,
  /** Memory that undo may take in a session, in bytes. */
  historyBytes: 64 * 1024 * 1024,
} as const;
