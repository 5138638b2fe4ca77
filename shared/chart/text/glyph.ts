/**
 * A letter as cells, and the sheets that letters are drawn on.
 *
 * A sheet is text. Blocks are parted by an empty line. The first line of a block names its letters, the lines below
 * draw them side by side, '#' for a knot and '.' for none. The last line of a drawing stands on the baseline, unless a
 * line of dashes marks the baseline: what follows the dashes hangs below it.
 *
 *     a     g
 *     .##   .##
 *     #.#   #.#
 *     .##   .##
 *     ---------
 *     ...   ..#
 *     ...   ##.
 */
export interface Glyph {
  /** Columns of the drawing; every row is as long. */
  readonly columns: number;
  /** From the first row that has a knot to the last one: '#' and '.'. */
  readonly rows: readonly string[];
  /** How many rows the drawing's top edge lies above the baseline; 0 or less for what hangs below it. */
  readonly rise: number;
}

/** The letters of a sheet by name, in the sheet's order. Throws where a block is drawn askew or a name is used twice. */
export function readSheet(sheet: string): Map<string, Glyph> {
  const glyphs = new Map<string, Glyph>();
  for (const block of sheet.trim().split(/\n\s*\n/)) {
    const lines = block.split('\n').map((line) => line.trim());
    const names = lines[0]!.split(/\s+/);
    const baseline = lines.findIndex((line, i) => i > 0 && /^-+$/.test(line));
    const drawn = lines
      .filter((_, i) => i > 0 && i !== baseline)
      .map((line) => line.split(/\s+/))
      .map((parts) => (parts.length === names.length ? parts : askew(lines[0]!)));
    const rise = baseline < 0 ? drawn.length : baseline - 1;
    names.forEach((name, i) => {
      if (glyphs.has(name)) throw new Error(`'${name}' is drawn twice.`);
      glyphs.set(
        name,
        glyphOf(
          name,
          drawn.map((parts) => parts[i]!),
          rise,
        ),
      );
    });
  }
  return glyphs;
}

function glyphOf(name: string, drawn: readonly string[], rise: number): Glyph {
  const columns = drawn[0]!.length;
  if (drawn.some((row) => row.length !== columns || /[^#.]/.test(row))) askew(name);
  const first = drawn.findIndex((row) => row.includes('#'));
  const last = drawn.findLastIndex((row) => row.includes('#'));
  return { columns, rows: drawn.slice(first, last + 1), rise: rise - first };
}

function askew(names: string): never {
  throw new Error(`The drawing of '${names}' is askew.`);
}
