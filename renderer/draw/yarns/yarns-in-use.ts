import { codeOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Yarn } from '../../../shared/design/schema.ts';

/** The yarns that any cell of any layer has, in the order of the list, and the ground. */
export function yarnsInUse(design: Design): Yarn[] {
  const used = new Uint8Array(256);
  for (const { rows } of design.layers) {
    for (const row of rows) for (let c = 0; c < row.length; c++) used[row[c]!] = 1;
  }
  used[codeOf(design.ground)] = 1;
  return design.yarns.filter(({ id }) => used[codeOf(id)] === 1);
}
