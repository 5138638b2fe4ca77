import type { Layer } from '../../../shared/design/design.ts';

/** A layer and its place, from 0 at the bottom, as a person counts: 'Tower, layer 3 of 3, shown, unlocked'. */
export function placeInWords({ name, visible, locked }: Layer, at: number, count: number): string {
  const state = `${visible ? 'shown' : 'hidden'}, ${locked ? 'locked' : 'unlocked'}`;
  return `${nameInWords(name)}, layer ${at + 1} of ${count}, ${state}`;
}

/** A file may hold a layer without a name. */
export function nameInWords(name: string): string {
  return name.trim() || 'Layer without a name';
}
