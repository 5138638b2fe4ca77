import { isYarn, type YarnId, yarnIdOf } from '../design/codes.ts';

/** The yarn that covers the most cells, the lowest id of equals; null where no cell has a yarn. */
export function mostUsedYarn(cells: Uint8Array): YarnId | null {
  const counts = new Float64Array(256);
  for (const code of cells) counts[code] = counts[code]! + 1;
  let most = 0;
  let found: YarnId | null = null;
  counts.forEach((count, code) => {
    if (!isYarn(code) || count <= most) return;
    most = count;
    found = yarnIdOf(code);
  });
  return found;
}
