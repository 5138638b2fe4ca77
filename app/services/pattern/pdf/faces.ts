/**
 * The faces of a document: each is read and embedded once, when a page first uses it, with the glyphs that are used of it, and
 * each glyph says which characters it is read as.
 */
import { readFileSync } from 'node:fs';
import { type FaceMeasures, faceMeasures } from '../../../../shared/pattern/faces/face-measures.ts';
import type { Face } from '../../../../shared/pattern/page/page.ts';
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
  const embedded = new Map<Face, { readonly font: EmbeddedFace; readonly quick: PdfFace }>();
  const inside = insideOf(pdf);
  return {
    use(face) {
      let used = embedded.get(face);
      if (!used) {
        pdf.registerFont(face, readFileSync(facePath(face))).font(face);
        const font = inside._font;
        used = { font, quick: quickFace(withoutShaping(font), faceMeasures(face).kern) };
        embedded.set(face, used);
      }
      const { font, quick } = used;
      inside.page.fonts[font.id] ??= font.ref();
      return quick;
    },
    end: () => {
      for (const { font } of embedded.values()) nameGlyphs(font);
    },
  };
}

/**
 * Characters of which the faces draw each as its own glyph, unmoved: to shape text, a face first reads tables of many thousand
 * rules, which takes longer than to write all pages of a chart. A soft hyphen is not among them.
 */
export const UNSHAPED = /^[ -~\u00a0-\u00ac\u00ae-\u017f\u2010-\u2027]$/u;

/** The face, asked for its rules only where a text is not one such character. */
function withoutShaping(font: EmbeddedFace): PdfFace {
  return {
    id: font.id,
    encode(text) {
      if (!UNSHAPED.test(text)) return font.encode(text);
      const code = text.codePointAt(0)!;
      const { id, advanceWidth: units } = font.font.glyphForCodePoint(code);
      // What the face has no glyph for is its own to draw.
      if (id === 0) return font.encode(text);
      const glyph = font.subset.includeGlyph(id);
      const advanceWidth = units * font.scale;
      font.widths[glyph] ??= advanceWidth;
      font.unicode[glyph] ??= [code];
      const place = { xAdvance: advanceWidth, advanceWidth, xOffset: 0, yOffset: 0 };
      return [[glyph.toString(16).padStart(4, '0')], [place]];
    },
  };
}

type GlyphPlace = ReturnType<PdfFace['encode']>[1][number];

/** What a letter takes by itself; null where it is drawn with several glyphs, or in another place. */
type Alone = { readonly hex: string; readonly advanceWidth: number } | null;

/** Letters that may be drawn as one, or that stand on others: the face itself is asked how. */
const SHAPED = /f[fil]|\p{M}/u;

/**
 * Most texts are letters side by side, with kerning between them, which is known already: what they take is put together
 * letter by letter, several times quicker than the face's own way, and the same.
 */
export function quickFace(font: PdfFace, kern: FaceMeasures['kern']): PdfFace {
  const known = new Map<string, Alone>();
  const aloneOf = (letter: string): Alone => {
    let alone = known.get(letter);
    if (alone === undefined) {
      const [[hex, ...others], [place]] = font.encode(letter);
      const isPlain = hex !== undefined && others.length === 0 && !place?.xOffset && !place?.yOffset;
      alone = isPlain && place ? { hex, advanceWidth: place.advanceWidth } : null;
      known.set(letter, alone);
    }
    return alone;
  };
  return {
    id: font.id,
    encode(text) {
      if (SHAPED.test(text)) return font.encode(text);
      const hexes: string[] = [];
      const places: GlyphPlace[] = [];
      let before = -1;
      for (const letter of text) {
        const alone = aloneOf(letter);
        if (!alone) return font.encode(text);
        const code = letter.codePointAt(0)!;
        if (before >= 0) places[places.length - 1]!.xAdvance += kern(before, code);
        before = code;
        hexes.push(alone.hex);
        const { advanceWidth } = alone;
        places.push({ xAdvance: advanceWidth, advanceWidth, xOffset: 0, yOffset: 0 });
      }
      return [hexes, places];
    },
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
