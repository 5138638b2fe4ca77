/**
 * A cell is one byte. Yarn `y7` is code 7, so yarns can be renamed and reordered without touching a cell.
 */

/** The cell is empty: the layer below shows. */
export const EMPTY = 0;
/** The cell is bare on purpose: the cord shows, and the layers below are hidden. */
export const BARE = 255;

export type YarnId = `y${number}`;

/** The byte of a yarn: 1 to 64. */
export function codeOf(id: YarnId): number {
  return Number(id.slice(1));
}

/** The yarn of a byte from 1 to 64. */
export function yarnIdOf(code: number): YarnId {
  return `y${code}`;
}

export function isYarn(code: number): boolean {
  return code !== EMPTY && code !== BARE;
}
