/**
 * Strips as rows of letters: `a` is code 1, `b` code 2 and so on, `-` bare, `_` a cell that is emptied, and `.` one
 * that nothing is drawn on. What lies outside the size is left out.
 */
import type { Block } from '../../../shared/chart/patch/block.ts';
import type { ChartSize } from '../../../shared/chart/tools/cell.ts';
import type { Strips } from '../../../shared/chart/tools/strips.ts';
import { BARE, EMPTY } from '../../../shared/design/codes.ts';

export function lettersOfStrips(strips: Strips, { columns, rows }: ChartSize): string[] {
  const letters = Array.from({ length: rows }, () => new Array<string>(columns).fill('.'));
  for (let i = 0; i < strips.length; i += 4) {
    for (let c = strips[i + 1]!; c < strips[i + 1]! + strips[i + 2]!; c++) {
      const row = letters[strips[i]!];
      if (row && c >= 0 && c < columns) row[c] = letterOf(strips[i + 3]!);
    }
  }
  return letters.map((row) => row.join(''));
}

/** The same letters; `.` is a cell that the block does not have. */
export function lettersOfBlock({ columns, rows, cells }: Block): string[] {
  return Array.from({ length: rows }, (_, r) =>
    Array.from(cells.subarray(r * columns, (r + 1) * columns), (code) =>
      code === EMPTY ? '.' : letterOf(code),
    ).join(''),
  );
}

export function blockFromLetters(letters: readonly string[]): Block {
  const codes = [...letters.join('')].map((letter) => {
    if (letter === '.') return EMPTY;
    return letter === '-' ? BARE : letter.charCodeAt(0) - 96;
  });
  return { columns: letters[0]?.length ?? 0, rows: letters.length, cells: Uint8Array.from(codes) };
}

/** A mask's or any marks' cells: `x` where marked, `.` elsewhere. */
export function lettersOfMarks(marks: Uint8Array, columns: number): string[] {
  return Array.from({ length: marks.length / columns }, (_, r) =>
    Array.from(marks.subarray(r * columns, (r + 1) * columns), (mark) => (mark === 1 ? 'x' : '.')).join(''),
  );
}

function letterOf(code: number): string {
  if (code === BARE) return '-';
  return code === EMPTY ? '_' : String.fromCharCode(96 + code);
}
