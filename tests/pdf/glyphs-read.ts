/** What the glyphs of a PDF are read as: by the table of characters of each face, ISO 32000-1, 9.10.3. */
import type { PdfObjects, PdfPageObject } from './pdf-objects.ts';

/** By the glyph's number in the file. */
type ReadGlyphs = ReadonlyMap<number, string>;

/** By the face's name among the resources of the page. */
function facesOn(pdf: PdfObjects, { dictionary }: PdfPageObject): Map<string, ReadGlyphs> {
  const fonts = pdf.dictionaryOf(pdf.dictionaryOf(dictionary.get('Resources'))?.get('Font'));
  return new Map(
    [...(fonts ?? [])].map(([name, font]) => {
      const table = pdf.bytesOf(pdf.dictionaryOf(font)?.get('ToUnicode'));
      return [name, glyphsIn(Buffer.from(table ?? []).toString('latin1'))];
    }),
  );
}

export interface ShownGlyph {
  /** The mark it stands in; null in an artifact. */
  readonly mark: number | null;
  readonly glyph: number;
  /** Undefined where the face does not say. */
  readonly read: string | undefined;
}

/** All glyphs of a page as they are written. */
export function shownGlyphs(pdf: PdfObjects, page: PdfPageObject): ShownGlyph[] {
  const faces = facesOn(pdf, page);
  const shown: ShownGlyph[] = [];
  let face: ReadGlyphs = new Map();
  let mark: number | null = null;
  for (const { name, operands } of page.operators) {
    if (name === 'Tf') face = faces.get(operands[0]!.slice(1)) ?? new Map();
    if (name === 'BDC') mark = Number(/\/MCID (\d+)/.exec(operands.join(' '))?.[1] ?? Number.NaN);
    if (name === 'BDC' && Number.isNaN(mark)) mark = null;
    if (name === 'EMC') mark = null;
    if (name !== 'Tj' && name !== 'TJ') continue;
    for (const string of operands.filter((each) => each.startsWith('<'))) {
      for (const hex of string.match(/[0-9a-f]{4}/gi) ?? []) {
        const glyph = Number.parseInt(hex, 16);
        shown.push({ mark, glyph, read: face.get(glyph) });
      }
    }
  }
  return shown;
}

/** The text within each mark of a page, by the name that pdfjs gives the mark. */
export function spokenMarks(pdf: PdfObjects, page: PdfPageObject): Map<string, string> {
  const spoken = new Map<string, string>();
  for (const { mark, read = '' } of shownGlyphs(pdf, page)) {
    if (mark === null) continue;
    const id = `p${page.object}R_mc${mark}`;
    spoken.set(id, (spoken.get(id) ?? '') + read);
  }
  return spoken;
}

function glyphsIn(table: string): Map<number, string> {
  const glyphs = new Map<number, string>();
  for (const [, first, characters] of table.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi)) {
    [...characters!.matchAll(/<([^>]*)>/g)].forEach(([, hex], i) => {
      const units = (hex!.match(/[0-9a-f]{4}/gi) ?? []).map((unit) => Number.parseInt(unit, 16));
      if (units.length > 0) glyphs.set(Number.parseInt(first!, 16) + i, String.fromCharCode(...units));
    });
  }
  return glyphs;
}
