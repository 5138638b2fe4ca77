/**
 * The width that pages reckon with, against two shapers from outside: fontkit, by which the PDF is set, and a browser's canvas
 * (Skia with HarfBuzz), by which the preview and the PNG are drawn. Both read the font files themselves.
 */
import { readFileSync } from 'node:fs';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import { facePath } from '../../app/services/pattern/face-path.ts';
import { quickFace, UNSHAPED } from '../../app/services/pattern/pdf/faces.ts';
import type { PdfFace } from '../../app/services/pattern/pdf-pen.ts';
import { faceFiles, type TextFace } from '../../shared/pattern/faces/face-files.ts';
import { faceMeasures } from '../../shared/pattern/faces/face-measures.ts';
import { textWidthMm } from '../../shared/pattern/faces/measure-text.ts';

const faces = Object.keys(faceFiles) as TextFace[];
const EM = 100;
/** Of the width, in all. */
const MOST_OFF = 0.01;

const samples = [
  // Pairs that kern most, in each script.
  ...[
    'AVATAR To Ty We',
    'P. T. V, LT’s',
    '“Tally” Wolle & Yak',
    'ГАТУ, Тут Ужгород',
    'ΑΥΤΟ Τα Ρόδος',
    'Łódź Ťava ďalší',
  ],
  // Ligatures, which one face has and another not.
  ...['office, affable, fi ffi fl ffl ff', 'Stoff für Auflage', 'sniffle'],
  // Marks: letters that have a composed form, written with theirs or without it, and those that have none.
  ...[
    'Ångström',
    'A\u030angstro\u0308m',
    'Việt Nam ị ọ ụ',
    'x\u0302\u0301 б\u0301 q\u0301',
    'ᾠδὴ Ἀθήνη',
    'о\u0301сень',
  ],
  // What stands on the pages.
  ...[
    'Row 8, right to left: 5 Moss (16–12), 2 Bark (11–10); lift 11, 9',
    '12 × 34,5 cm ± 3 %',
    'senkrechter doppelter Schlag',
  ],
];

/** Words of letters side by side in the code charts, so that every pair of neighbours is tried. */
function wordsOf(face: TextFace): string[] {
  const letters = [...faceMeasures(face).advances.keys()]
    .map((code) => String.fromCodePoint(code))
    .filter((letter) => /\p{L}/u.test(letter) && letter === letter.normalize('NFC'));
  return Array.from({ length: Math.ceil(letters.length / 12) }, (_, i) =>
    letters.slice(12 * i, 12 * i + 12).join(''),
  );
}

function off(text: string, face: TextFace, width: number): string[] {
  const share = Math.abs(textWidthMm(text, face, EM) / width - 1);
  return share > MOST_OFF ? [`${face}: ${text} by ${(share * 100).toFixed(2)} %`] : [];
}

describe.each(faces)('text in %s', (face) => {
  const texts = [...samples, ...wordsOf(face)];

  it('is as wide as the PDF sets it', () => {
    const font = fontkit.openSync(facePath(face)) as fontkit.Font;
    const widthOf = (text: string) =>
      font.layout(text.normalize('NFC')).positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    expect(texts.flatMap((text) => off(text, face, (widthOf(text) / font.unitsPerEm) * EM))).toEqual([]);
  });

  it('is set letter by letter as the face itself sets it, glyph for glyph', () => {
    const font = fontkit.openSync(facePath(face)) as fontkit.Font;
    const shaped: PdfFace = {
      id: face,
      encode(text) {
        const { glyphs, positions } = font.layout(text);
        const places = positions.map(({ xAdvance, xOffset, yOffset }, i) => ({
          ...{ xAdvance, xOffset, yOffset },
          advanceWidth: glyphs[i]!.advanceWidth,
        }));
        return [glyphs.map(({ id }) => String(id)), places];
      },
    };
    const quick = quickFace(shaped, faceMeasures(face).kern);
    for (const text of texts) expect(quick.encode(text), text).toEqual(shaped.encode(text));
  });

  it('has characters that are drawn as their own glyph, unmoved, and need no shaping', () => {
    const font = fontkit.openSync(facePath(face)) as fontkit.Font;
    const plain = [...faceMeasures(face).advances.keys()].filter((code) =>
      UNSHAPED.test(String.fromCodePoint(code)),
    );
    expect(plain.length).toBeGreaterThan(300);
    for (const code of plain) {
      const { glyphs, positions } = font.layout(String.fromCodePoint(code));
      const { id, advanceWidth } = font.glyphForCodePoint(code);
      expect(glyphs.map((glyph) => glyph.id)).toEqual([id]);
      expect(positions).toEqual([
        expect.objectContaining({ xAdvance: advanceWidth, xOffset: 0, yOffset: 0 }),
      ]);
    }
  });

  it('is as wide as a canvas draws it', () => {
    const family = `Measured ${face}`;
    expect(GlobalFonts.register(readFileSync(facePath(face)), family)).toBeTruthy();
    const pen = createCanvas(10, 10).getContext('2d');
    pen.font = `${EM}px "${family}"`;
    expect(texts.flatMap((text) => off(text, face, pen.measureText(text).width))).toEqual([]);
  });
});
