/** The faces' measures against fontkit, which reads the font files themselves. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import { measuresText } from '../../build/faces/measure.ts';
import { faceFiles, type TextFace } from '../../shared/pattern/faces/face-files.ts';
import { faceMeasures } from '../../shared/pattern/faces/face-measures.ts';
import {
  fitText,
  joinedLines,
  missingCharacters,
  textWidthMm,
  widestPieceMm,
  wrapText,
} from '../../shared/pattern/faces/measure-text.ts';

const require = createRequire(import.meta.url);
const samples = [
  'Sallow Water, 12 × 3½',
  'Ångström Łódź Þór ỹ',
  'Θάλασσα καὶ ᾠδή',
  'Жёлтый ґанок їжак',
  '“–—” ± € №',
];

describe('the measures of the faces', () => {
  it('are those that the font files have now', () => {
    const stored = readFileSync(
      new URL('../../shared/pattern/faces/measures.generated.json', import.meta.url),
      'utf8',
    );
    expect(stored).toBe(measuresText());
  });

  it.each(Object.keys(faceFiles) as TextFace[])('give the width that fontkit gives, in %s', (face) => {
    const font = fontkit.openSync(require.resolve(faceFiles[face])) as fontkit.Font;
    for (const sample of samples) {
      expect(missingCharacters(sample, face)).toEqual([]);
      const width = (font.layout(sample).advanceWidth / font.unitsPerEm) * 10;
      expect(textWidthMm(sample, face, 10)).toBeCloseTo(width, 2);
    }
  });

  it.each(Object.keys(faceFiles) as TextFace[])('give the heights that fontkit gives, in %s', (face) => {
    const { ascent, descent, capHeight } = fontkit.openSync(require.resolve(faceFiles[face])) as fontkit.Font;
    expect(faceMeasures(face)).toMatchObject({ ascent, descent: -descent, capHeight });
  });

  it('give each symbol its whole em', () => {
    expect(textWidthMm('aB&', 'symbols', 2.5)).toBe(7.5);
    expect(missingCharacters('a?', 'symbols')).toEqual(['?']);
  });

  it('tell which letters a face lacks', () => {
    expect(missingCharacters('Reed 葦 reed 葦', 'sans')).toEqual(['葦']);
  });

  it('count a letter with its mark once, however it was typed', () => {
    expect(textWidthMm('e\u0301', 'sans', 4)).toBe(textWidthMm('é', 'sans', 4));
  });
});

describe('text that is laid out', () => {
  it('breaks at spaces and stays within its width', () => {
    const lines = wrapText('Seven strands of moss and three of madder, cut and ready', 'sans', 3, 40);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(textWidthMm(line, 'sans', 3)).toBeLessThanOrEqual(40);
    expect(lines.join(' ')).toBe('Seven strands of moss and three of madder, cut and ready');
  });

  it('keeps a figure and its unit on one line', () => {
    for (let width = 12; width < 40; width++) {
      const lines = wrapText('It is 15 cm × 17.3 cm, or 5 7/8 in, and weighs 240 g', 'sans', 3, width);
      expect(lines.filter((line) => /^(cm|in|g|7\/8)\b/.test(line))).toEqual([]);
      expect(lines.join(' ')).toBe('It is 15 cm × 17.3 cm, or 5 7/8 in, and weighs 240 g');
    }
  });

  it('keeps hours and minutes, pounds and ounces, and signs with their figures on one line', () => {
    const text =
      'about 9 h 10 min, 2 lb 3 oz, 12 Std. 40 Min., 1 × 50 g, 18 m ± 6 % or 15 cm (5 7/8 in) × 17 cm';
    for (let width = 22; width < 70; width++) {
      const lines = wrapText(text, 'sans', 3, width);
      expect(lines.filter((line) => /^(10 min|3 oz|40 Min|50 g|[×±]|6 %)/.test(line))).toEqual([]);
      expect(lines.join(' ')).toBe(text);
    }
  });

  it('tells the width of what it keeps on one line', () => {
    const text = 'pieces of 152.4 cm';
    const width = widestPieceMm(text, 'sans', 3);
    expect(width).toBeCloseTo(textWidthMm('152.4 cm', 'sans', 3), 9);
    expect(wrapText(text, 'sans', 3, width)).toEqual(['pieces of', '152.4 cm']);
  });

  it('breaks a word only where it alone is too wide', () => {
    const lines = wrapText(`short ${'W'.repeat(60)} end`, 'serif', 4, 50);
    expect(lines[0]).toBe('short');
    expect(lines.join('').replaceAll(' ', '')).toBe(`short${'W'.repeat(60)}end`);
    for (const line of lines) expect(textWidthMm(line, 'serif', 4)).toBeLessThanOrEqual(50);
  });

  it('keeps the ranges of a written row whole, and its own line breaks', () => {
    expect(wrapText('5 Moss (16-12)\n2 Bark', 'sans', 4, 15)).toEqual(['5 Moss', '(16-12)', '2 Bark']);
  });

  it('breaks after a hyphen between letters, never at a space that forbids it', () => {
    expect(wrapText('left-handed', 'sans', 4, 16)).toEqual(['left-', 'handed']);
    expect(wrapText('12\u00a0mm wide', 'sans', 4, 15)).toEqual(['12\u00a0mm', 'wide']);
  });

  it('never parts a mark from its letter', () => {
    const lines = wrapText('q\u0301'.repeat(20), 'sans', 4, 10);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).toMatch(/^(q\u0301)+$/);
  });

  it('says which lines go on in the middle of a word', () => {
    const text = `left-handed makers, ${'W'.repeat(12)} vor- und rückwärts\n\nend`;
    const lines = wrapText(text, 'sans', 4, 18);
    const joined = joinedLines(text, lines);
    expect(lines.map((line, i) => (joined[i] ? '' : ' ') + line).join('')).toBe(
      ` ${text.replaceAll('\n', ' ')}`,
    );
    expect(joined.filter(Boolean).length).toBeGreaterThan(2);
  });

  it('is nothing where not even an ellipsis fits', () => {
    expect(fitText('Moss', 'sans', 3, 0.5)).toBe('');
  });

  it('has one empty line where there is no text', () => {
    expect(wrapText('', 'sans', 3, 40)).toEqual(['']);
  });

  it('is cut with an ellipsis where it does not fit, and left alone where it does', () => {
    expect(fitText('Moss', 'sans', 3, 40)).toBe('Moss');
    const cut = fitText('Moss that grew on the north side of the oldest wall', 'sans', 3, 30);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidthMm(cut, 'sans', 3)).toBeLessThanOrEqual(30);
  });
});
