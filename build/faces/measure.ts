/**
 * Measures the faces once, so that pages are laid out alike in the renderer and on paper, and without font files:
 * `npx tsx build/faces/measure.ts` writes shared/pattern/faces/measures.generated.json.
 */

import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import * as fontkit from 'fontkit';
import { faceFiles, type TextFace } from '../../shared/pattern/faces/face-files.ts';
import { type Kerning, kerningOf } from './kerning.ts';

/** Blocks of Unicode that names are written in: Latin, Greek and Cyrillic with all extensions, marks and signs. */
const blocks: readonly (readonly [number, number])[] = [
  [0x20, 0x36f],
  [0x370, 0x52f],
  [0x1d00, 0x1dbf],
  [0x1e00, 0x1fff],
  [0x2000, 0x206f],
  [0x2070, 0x209f],
  [0x20a0, 0x20cf],
  [0x2100, 0x218f],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x25a0, 0x25ff],
  [0x2c60, 0x2c7f],
  [0x2de0, 0x2dff],
  [0xa640, 0xa69f],
  [0xa720, 0xa7ff],
];

/** Lengths in thousandths of the em. `runs` holds stretches of characters: the first one, then all their advances. */
export interface FaceMeasures {
  ascent: number;
  descent: number;
  capHeight: number;
  /** Advance of the mark that is drawn for a character that the face lacks. */
  missing: number;
  runs: number[][];
  kerning: Kerning;
  /** Letters that are drawn as one, and what it takes. */
  ligatures: Record<string, number>;
}

/** The ligatures of Latin text; a face has them or not. */
const ligatures = ['ffi', 'ffl', 'ff', 'fi', 'fl'];

export function measureFaces(): Record<TextFace, FaceMeasures> {
  const require = createRequire(import.meta.url);
  const measured = Object.entries(faceFiles).map(([face, file]) => [
    face,
    measureFace(require.resolve(file)),
  ]);
  return Object.fromEntries(measured) as Record<TextFace, FaceMeasures>;
}

export function measuresText(): string {
  const faces = Object.entries(measureFaces()).map(([face, { runs, kerning, ...rest }]) => {
    const lines = runs.map((run) => `      ${JSON.stringify(run)}`).join(',\n');
    const head = JSON.stringify(rest).slice(1, -1);
    const pairs = Object.entries(kerning).map(
      ([name, list]) => `      "${name}": [\n${linesOf(list)}\n      ]`,
    );
    return [
      `  ${JSON.stringify(face)}: {`,
      `    ${head},`,
      '    "kerning": {',
      `${pairs.join(',\n')}`,
      '    },',
      `    "runs": [\n${lines}\n    ]\n  }`,
    ].join('\n');
  });
  return `{\n${faces.join(',\n')}\n}\n`;
}

function linesOf(list: readonly unknown[]): string {
  return list.map((each) => `        ${JSON.stringify(each)}`).join(',\n');
}

function measureFace(path: string): FaceMeasures {
  const font = fontkit.openSync(path) as fontkit.Font;
  const thousandths = (length: number) => Math.round((length / font.unitsPerEm) * 1000);
  const known = new Set(font.characterSet);
  const runs: number[][] = [];
  let last = -2;
  for (const code of blocks.flatMap(([from, to]) =>
    Array.from({ length: to - from + 1 }, (_, i) => from + i),
  )) {
    if (!known.has(code)) continue;
    if (code !== last + 1) runs.push([code]);
    last = code;
    runs.at(-1)!.push(thousandths(font.glyphForCodePoint(code).advanceWidth));
  }
  return {
    ascent: thousandths(font.ascent),
    descent: thousandths(-font.descent),
    capHeight: thousandths(font.capHeight),
    missing: thousandths(font.getGlyph(0).advanceWidth),
    runs,
    kerning: kerningOf(
      font,
      runs.flatMap(([first, ...rest]) => rest.map((_, i) => first! + i)),
    ),
    ligatures: Object.fromEntries(
      ligatures
        .map((letters) => font.layout(letters))
        .filter(({ glyphs }) => glyphs.length === 1)
        .map(({ glyphs, advanceWidth }) => [
          String.fromCodePoint(...glyphs[0]!.codePoints),
          thousandths(advanceWidth),
        ]),
    ),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(
    new URL('../../shared/pattern/faces/measures.generated.json', import.meta.url),
    measuresText(),
  );
}
