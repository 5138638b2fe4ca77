/**
 * The symbol alphabet and the lift marks as an OpenType font, the same bytes each time. The em is the cell: each glyph is as wide as it
 * is high, and stands with the cell's bottom on the baseline.
 */
import opentype, { type Path } from 'opentype.js';
import type { PathStep } from '../../shared/pattern/page/page.ts';
import { liftShapes } from '../../shared/yarn/lift-shapes.ts';
import { alphabet, outline } from '../../shared/yarn/symbols.ts';

const EM = 1000;
/** Written as the day on which the font was made and changed: 1 January 2026, in seconds since 1970. */
const MADE = 1_767_225_600;
/** Seconds from 1904, where a font's dates start, to 1970. */
const SINCE_1904 = 2_082_844_800;

export function fontBytes(): Uint8Array {
  const blank = new opentype.Path();
  const glyphs = [
    new opentype.Glyph({ name: '.notdef', advanceWidth: EM, path: blank }),
    new opentype.Glyph({ name: 'space', unicode: 32, advanceWidth: EM, path: new opentype.Path() }),
    ...[...alphabet.map(({ text }) => ({ text, outline: outline(text) })), ...Object.values(liftShapes)]
      .sort((a, b) => a.text.codePointAt(0)! - b.text.codePointAt(0)!)
      .map(
        (shape) =>
          new opentype.Glyph({
            name: glyphName(shape.text),
            unicode: shape.text.codePointAt(0)!,
            advanceWidth: EM,
            path: pathOf(shape.outline),
          }),
      ),
  ];
  const font = new opentype.Font({
    familyName: 'Larkrow Symbols',
    styleName: 'Regular',
    unitsPerEm: EM,
    ascender: EM,
    descender: 0,
    createdTimestamp: MADE,
    designer: 'Larkrow',
    license: 'MIT',
    version: 'Version 1.000',
    description: 'Yarn symbols for charts of knots',
    glyphs,
  });
  return withFixedDates(new Uint8Array(font.toArrayBuffer()));
}

const digitNames = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** The names that PostScript gives these characters, so that readers without a map of text still find the letter. */
function glyphName(text: string): string {
  if (text === '@') return 'at';
  if (text === '&') return 'ampersand';
  const code = text.codePointAt(0)!;
  if (code > 0x7f) return `uni${code.toString(16).toUpperCase()}`;
  return /\d/.test(text) ? digitNames[Number(text)]! : text;
}

/** The outline in font units, with y up. */
function pathOf(steps: readonly PathStep[]): Path {
  const path = new opentype.Path();
  const x = (share: number) => Math.round(share * EM);
  const y = (share: number) => Math.round((1 - share) * EM);
  for (const step of steps) {
    switch (step[0]) {
      case 'M':
        path.moveTo(x(step[1]), y(step[2]));
        break;
      case 'L':
        path.lineTo(x(step[1]), y(step[2]));
        break;
      case 'C':
        path.curveTo(x(step[1]), y(step[2]), x(step[3]), y(step[4]), x(step[5]), y(step[6]));
        break;
      case 'Z':
        path.close();
        break;
    }
  }
  return path;
}

/** Offsets of a font's file, all from the OpenType specification: `head` and its table directory. */
const DIRECTORY_AT = 12;
const ENTRY_BYTES = 16;
const ADJUSTMENT_AT = 8;
const MODIFIED_AT = 28;
/** The sum that a whole font's file is adjusted to. */
const WHOLE_SUM = 0xb1b0afba;

/** The library stamps the moment of writing into `head`; a fixed one is put there, and the sums are made anew. */
function withFixedDates(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entry = tableEntry(view, 'head');
  const head = view.getUint32(entry + 8);
  const length = view.getUint32(entry + 12);
  view.setBigUint64(head + MODIFIED_AT, BigInt(MADE + SINCE_1904));
  view.setUint32(head + ADJUSTMENT_AT, 0);
  view.setUint32(entry + 4, checksum(view, head, length));
  view.setUint32(head + ADJUSTMENT_AT, (WHOLE_SUM - checksum(view, 0, bytes.byteLength)) >>> 0);
  return bytes;
}

function tableEntry(view: DataView, tag: string): number {
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = DIRECTORY_AT + i * ENTRY_BYTES;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(at + k)));
    if (name === tag) return at;
  }
  throw new Error(`the font has no table ${tag}`);
}

/** The sum of big-endian words, as the OpenType specification has it; a part of a word is filled with zeros. */
function checksum(view: DataView, from: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at += 4) {
    let word = 0;
    for (let k = 0; k < 4; k++) word = word * 256 + (at + k < length ? view.getUint8(from + at + k) : 0);
    sum = (sum + word) >>> 0;
  }
  return sum;
}
