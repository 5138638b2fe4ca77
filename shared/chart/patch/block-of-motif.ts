import { codeOf, yarnIdOf } from '../../design/codes.ts';
import type { Design } from '../../design/design.ts';
import { limits } from '../../design/limits.ts';
import type { Yarn } from '../../design/schema.ts';
import { good, problem, type Result } from '../../result.ts';
import { deltaE2000 } from '../../yarn/colour-difference.ts';
import { unusedSymbols } from '../../yarn/symbols.ts';
import type { Block } from './block.ts';
import { blockOf, type Motif } from './motif.ts';

/**
 * Colours less than this apart (CIEDE2000) are one yarn's: a maker who has the one buys no other. Well below the
 * difference from which yarns are told apart on a hanging. Value from memory: to be tried on skeins.
 */
const SAME_YARN_DELTA_E = 2;

export interface FittedMotif {
  /** The motif's cells in the codes of the design's yarns, the new ones among them. */
  readonly block: Block;
  /** To be added to the design's yarns, in this order, before the block is drawn; their ids and symbols are free. */
  readonly newYarns: readonly Yarn[];
}

/**
 * The motif in a design's yarns. A yarn of the motif becomes the design's yarn of the same name and colour, or else
 * the one of the nearest colour, where that can't be told apart; two yarns of the motif never become one. Yarns that
 * the design lacks are to be added. Problem: `too-many-yarns`.
 */
export function blockOfMotif(motif: Motif, design: Design): Result<FittedMotif> {
  const block = blockOf(motif);
  const found = counterparts(motif.yarns, design.yarns);
  const missing = motif.yarns.filter((yarn) => !found.has(yarn));
  const count = design.yarns.length + missing.length;
  if (count > limits.yarns) {
    return problem(
      'too-many-yarns',
      `The motif brings the design to ${count} yarns, and it can have ${limits.yarns}. Merge some yarns first.`,
    );
  }
  const newYarns = added(missing, design.yarns);
  const codes = Uint8Array.from({ length: 256 }, (_, code) => code);
  for (const yarn of motif.yarns) {
    const own = found.get(yarn) ?? newYarns[missing.indexOf(yarn)]!;
    codes[codeOf(yarn.id)] = codeOf(own.id);
  }
  return good({ block: { ...block, cells: block.cells.map((code) => codes[code]!) }, newYarns });
}

/** For each of the motif's yarns the design's own that stands for it, where there is one. */
function counterparts(wanted: readonly Yarn[], yarns: readonly Yarn[]): ReadonlyMap<Yarn, Yarn> {
  const found = new Map<Yarn, Yarn>();
  const taken = new Set<Yarn>();
  const take = (yarn: Yarn, own: Yarn | undefined) => {
    if (!own) return;
    found.set(yarn, own);
    taken.add(own);
  };
  for (const yarn of wanted) {
    const isSame = (own: Yarn) => own.name === yarn.name && own.color === yarn.color && !taken.has(own);
    take(yarn, yarns.find(isSame));
  }
  for (const yarn of wanted) {
    if (found.has(yarn)) continue;
    const near = yarns
      .filter((own) => !taken.has(own))
      .map((own) => ({ own, apart: deltaE2000(own.color, yarn.color) }))
      .filter(({ apart }) => apart < SAME_YARN_DELTA_E)
      .sort((a, b) => a.apart - b.apart);
    take(yarn, near[0]?.own);
  }
  return found;
}

/** The missing yarns with the lowest free ids, and with their own symbols where no yarn has them yet. */
function added(missing: readonly Yarn[], yarns: readonly Yarn[]): Yarn[] {
  const list = [...yarns];
  for (const yarn of missing) {
    const used = list.map(({ symbol }) => symbol);
    const symbol = used.includes(yarn.symbol) ? unusedSymbols(used)[0]! : yarn.symbol;
    let code = 1;
    while (list.some(({ id }) => codeOf(id) === code)) code++;
    list.push({ ...yarn, id: yarnIdOf(code), symbol });
  }
  return list.slice(yarns.length);
}
