/**
 * The faces of a document: each is read and embedded once, when a page first uses it, with the glyphs that are used of it, and
 * each glyph says which characters it is read as.
 */
import { readFileSync } from 'node:fs';
import type { Face } from '../../../../shared/pattern/page.ts';
import { facePath } from '../face-path.ts';
import type { PdfFace } from '../pdf-pen.ts';
import { type EmbeddedFace, insideOf } from './pdf-inside.ts';

export interface EmbeddedFaces {
  /** Puts the face among the resources of the page that is drawn. */
  use(face: Face): PdfFace;
  /** When all pages are drawn. */
  end(): void;
}

export function embedFaces(pdf: PDFKit.PDFDocument): EmbeddedFaces {
  const embedded = new Map<Face, EmbeddedFace>();
  const inside = insideOf(pdf);
  return {
    use(face) {
      let font = embedded.get(face);
      if (!font) {
        pdf.registerFont(face, readFileSync(facePath(face))).font(face);
        font = inside._font;
        embedded.set(face, font);
      }
      inside.page.fonts[font.id] ??= font.ref();
      return font;
    },
    end: () => embedded.forEach(nameGlyphs),
  };
}

/**
 * A letter may be drawn as another with a mark on it: pdfkit then takes the other for the whole, and every i of a text with
 * an ị in it would be read as ị. So a glyph is read as the character whose own glyph it is, and only a ligature as what it was
 * drawn for.
 */
function nameGlyphs({ font, subset, unicode }: EmbeddedFace): void {
  const characters = charactersOf(font);
  unicode.forEach((drawnFor, glyph) => {
    if (drawnFor.length > 1) return;
    const character = characters.get(subset.glyphs[glyph]!);
    if (glyph === 0 || (character === undefined && drawnFor.length === 0)) unicode[glyph] = [UNKNOWN];
    else if (character !== undefined) unicode[glyph] = [character];
  });
}

/** What is drawn and stands for nothing; PDF/UA (7.21.7) allows no character 0. */
const UNKNOWN = 0xfffd;

/** By glyph. Of several characters with one glyph, the plain one: a space, not one that forbids a break; μ, not the sign for micro. */
function charactersOf(font: EmbeddedFace['font']): Map<number, number> {
  const characters = new Map<number, number>();
  for (const code of font.characterSet) {
    const { id } = font.glyphForCodePoint(code);
    const text = String.fromCodePoint(code);
    if (!characters.has(id) || text === text.normalize('NFKC')) characters.set(id, code);
  }
  return characters;
}
