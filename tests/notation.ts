/**
 * Charts as rows of letters, so that a case in a test is a line: `a` is yarn y1, `b` is y2 … `z` is y26, `A` to `Z`
 * are y27 to y52, `.` is an empty cell, `-` a bare one. Row 1 comes first, cord 1 is the left letter.
 */
import type { Chart } from '../shared/chart/chart.ts';
import { BARE, codeOf, EMPTY, isYarn, yarnIdOf } from '../shared/design/codes.ts';
import { defaults } from '../shared/design/defaults.ts';
import type { Design, Layer } from '../shared/design/design.ts';
import { newDesign } from '../shared/design/new-design.ts';
import type { Yarn } from '../shared/design/schema.ts';

const alphabet = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * A design of one layer, 'picture', drawn as `rows` say; or of several, bottom first, where `rows` is a list of
 * such lists. Its yarns are a new design's, and more where the letters need them; `y1` is the ground. `rest` replaces
 * any other field.
 */
export function designFromLetters(
  rows: readonly string[] | readonly (readonly string[])[],
  rest: Partial<Design> = {},
): Design {
  const sheets = (typeof rows[0] === 'string' ? [rows] : rows) as readonly (readonly string[])[];
  const first = sheets[0]?.[0];
  if (!first) throw new Error('the letters hold no cell');
  const layers = sheets.map((sheet, i): Layer => {
    const id = i === sheets.length - 1 ? 'picture' : `sheet-${i + 1}`;
    const name = i === sheets.length - 1 ? 'Picture' : `Sheet ${i + 1}`;
    if (sheet.length !== sheets[0]!.length) throw new Error(`${name} has ${sheet.length} rows`);
    return { id, name, visible: true, locked: false, rows: sheet.map((row) => codesOf(row, first.length)) };
  });
  const most = Math.max(
    0,
    ...layers.flatMap((layer) => layer.rows.flatMap((row) => [...row].filter(isYarn))),
  );
  const yarns = Array.from({ length: Math.max(most, defaults.yarns.length) }, (_, i) => yarnAt(i));
  const design = newDesign({ title: 'Letters', columns: first.length, rows: sheets[0]!.length, yarns });
  return { ...design, layers, ...rest };
}

/** The rows of letters of one layer, counted from 0 at the bottom. */
export function lettersOf(design: Design, layer = 0): string[] {
  const sheet = design.layers[layer];
  if (!sheet) throw new Error(`the design has no layer at ${layer}`);
  return sheet.rows.map((row) => Array.from(row, letterOf).join(''));
}

/** The rows of letters of a flat chart. */
export function lettersOfChart({ cells, columns, rows }: Chart): string[] {
  return Array.from({ length: rows }, (_, r) =>
    Array.from(cells.subarray(r * columns, (r + 1) * columns), letterOf).join(''),
  );
}

function yarnAt(i: number): Yarn {
  const letter = alphabet[i]!;
  const known = defaults.yarns[i] ?? { ...defaults.yarns[0]!, name: `Yarn ${letter}` };
  return { ...known, id: yarnIdOf(i + 1), symbol: letter };
}

function codesOf(letters: string, columns: number): Uint8Array {
  if (letters.length !== columns) throw new Error(`'${letters}' is not ${columns} cells long`);
  return Uint8Array.from(letters, (letter) => {
    if (letter === '.') return EMPTY;
    if (letter === '-') return BARE;
    const i = alphabet.indexOf(letter);
    if (i < 0) throw new Error(`'${letter}' is not a letter of the notation`);
    return codeOf(yarnIdOf(i + 1));
  });
}

function letterOf(code: number): string {
  if (code === EMPTY) return '.';
  if (code === BARE) return '-';
  const letter = alphabet[code - 1];
  if (!letter) throw new Error(`code ${code} has no letter`);
  return letter;
}
