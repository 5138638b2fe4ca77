/** Changes of the stash, as new lists of its yarns. Places in it count from 0. */
import type { YarnLook } from '../../../../shared/design/yarn-edits.ts';
import { type StashYarn, stashYarnOf } from '../../../../shared/yarn/stash.ts';

type Yarns = readonly StashYarn[];

/** The yarn at the end of the list; null where one of its name and colour is there already. */
export function withYarnPutIn(yarns: Yarns, look: YarnLook): StashYarn[] | null {
  const isThere = yarns.some(({ name, color }) => name === look.name && color === look.color);
  return isThere ? null : [...yarns, stashYarnOf(look)];
}

/** Another label on the yarn at a place; what else the file says of it is kept. */
export function withYarnChanged(yarns: Yarns, at: number, look: YarnLook, notes: string): StashYarn[] {
  return yarns.map((yarn, i) => (i === at ? labelled(yarn, look, notes) : yarn));
}

/** A yarn that was written from nothing, at the end of the list. */
export function withYarnAdded(yarns: Yarns, look: YarnLook, notes: string): StashYarn[] {
  return [...yarns, labelled({}, look, notes)];
}

export function withoutYarn(yarns: Yarns, at: number): StashYarn[] {
  return yarns.filter((_, i) => i !== at);
}

/** An empty price or note is left out of the file. */
function labelled(before: object, look: YarnLook, notes: string): StashYarn {
  const { price: _price, notes: _notes, ...rest } = before as Partial<StashYarn>;
  const text = notes.trim();
  return { ...rest, ...stashYarnOf(look), ...(text !== '' && { notes: text }) };
}
