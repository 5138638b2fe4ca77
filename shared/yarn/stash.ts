/**
 * The stash: the yarns that the maker owns, kept beside the designs and shared by all of them, as one JSON file. A
 * design takes a copy of a yarn, so that it stays whole where the stash changes or is missing. Fields mean what they
 * mean in a design, and keys that this version does not know are kept.
 */
import { z } from 'zod';
import { limits } from '../design/limits.ts';
import { yarnSchema } from '../design/schema.ts';
import type { YarnLook } from '../design/yarn-edits.ts';
import { deltaE2000 } from './colour-difference.ts';

const STASH_FORMAT = 'larkrow-stash';
const STASH_VERSION = 1;

const { name, color, diameterMm, metresPer100G, skeinG, price, ownedSkeins } = yarnSchema.shape;

const stashYarnSchema = z.looseObject({
  name,
  color,
  diameterMm,
  metresPer100G,
  skeinG,
  price,
  ownedSkeins: ownedSkeins.unwrap(),
  /** Where it was bought, its dye lot, what it is made of. */
  notes: z.string().max(limits.stashNoteChars).optional(),
});

export const stashSchema = z.looseObject({
  format: z.literal(STASH_FORMAT),
  version: z.literal(STASH_VERSION),
  yarns: z.array(stashYarnSchema).max(limits.stashYarns),
});

export type StashYarn = Omit<YarnLook, 'ownedSkeins'> & { ownedSkeins: number; notes?: string | undefined };

export interface Stash {
  format: typeof STASH_FORMAT;
  version: typeof STASH_VERSION;
  yarns: StashYarn[];
}

export const emptyStash: Stash = { format: STASH_FORMAT, version: STASH_VERSION, yarns: [] };

/** The yarn of the stash as a design takes it in, notes left behind. */
export function lookOfStashYarn(yarn: StashYarn): YarnLook {
  return { ...labelOf(yarn), ownedSkeins: yarn.ownedSkeins };
}

/** A design's yarn as the stash keeps it; none of it owned where the design does not tell. */
export function stashYarnOf(yarn: YarnLook): StashYarn {
  return { ...labelOf(yarn), ownedSkeins: yarn.ownedSkeins ?? 0 };
}

/** One yarn of the stash, and how far its colour is from the one that is looked for. */
export interface StashMatch {
  /** Place in the stash, from 0. */
  readonly index: number;
  readonly yarn: StashYarn;
  /** CIEDE2000. */
  readonly difference: number;
}

/** The `most` yarns nearest in colour (`#rrggbb`), the nearest first; of two as near, the one that stands first. */
export function matchStash(stash: Stash, hex: string, most = 5): StashMatch[] {
  return stash.yarns
    .map((yarn, index) => ({ index, yarn, difference: deltaE2000(yarn.color, hex) }))
    .sort((a, b) => a.difference - b.difference || a.index - b.index)
    .slice(0, most);
}

/** What both hold; a price only where there is one. */
function labelOf({ name, color, diameterMm, metresPer100G, skeinG, price }: YarnLook | StashYarn) {
  const label = { name, color, diameterMm, metresPer100G, skeinG };
  return price === undefined ? label : { ...label, price };
}
