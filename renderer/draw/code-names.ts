import { BARE, yarnIdOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';

/** What a cell of that code is called: its yarn's name, or bare cord. */
export function nameOfCode({ yarns }: Pick<Design, 'yarns'>, code: number): string {
  if (code === BARE) return 'bare cord';
  return yarns.find(({ id }) => id === yarnIdOf(code))?.name ?? 'unknown yarn';
}
