/**
 * Edits of how bundles are cut and how far that is, each of its own: ticks are no steps of the history, and whatever is
 * undone beside them leaves them as they are.
 */
import { toTenths } from '../tying/tenths.ts';
import type { YarnId } from './codes.ts';
import type { Design } from './design.ts';
import type { BundleSettings } from './schema.ts';

export type CutPieces = NonNullable<BundleSettings['cut']>[number];

/** How pieces are cut, which labels were printed for last, or by which plan; undefined: not told. */
export type SetBundles = {
  [F in 'fitted' | 'labelled' | 'plan']: {
    readonly kind: 'set-bundles';
    readonly field: F;
    readonly value: BundleSettings[F];
  };
}['fitted' | 'labelled' | 'plan'];

/** What is cut of one yarn and one length: its entries, with their places in the list, from 0. None: nothing is. */
export interface SetCut {
  readonly kind: 'set-cut';
  readonly yarn: YarnId;
  readonly cutMm: number;
  readonly entries: readonly { readonly at: number; readonly cut: CutPieces }[];
}

/** So many pieces of one yarn and one length are cut; 0: none. */
export function cutOf(
  { bundles }: Pick<Design, 'bundles'>,
  { yarn, cutMm }: Pick<CutPieces, 'yarn' | 'cutMm'>,
  pieces: number,
): SetCut {
  const all = bundles?.cut ?? [];
  const found = all.findIndex((each) => isSameCut(each, { yarn, cutMm }));
  const at = found === -1 ? all.length : found;
  return {
    kind: 'set-cut',
    yarn,
    cutMm,
    entries: pieces > 0 ? [{ at, cut: { yarn, cutMm, pieces } }] : [],
  };
}

export function applyToBundles(design: Design, edit: SetBundles | SetCut): Design {
  const { bundles = {} } = design;
  if (edit.kind === 'set-bundles') return withBundles(design, { ...bundles, [edit.field]: edit.value });
  const cut = (bundles.cut ?? []).filter((each) => !isSameCut(each, edit));
  for (const each of edit.entries) cut.splice(each.at, 0, each.cut);
  return withBundles(design, { ...bundles, cut: cut.length > 0 ? cut : undefined });
}

export function inverseForBundles(before: Design, edit: SetBundles | SetCut): SetBundles | SetCut {
  if (edit.kind === 'set-bundles') return { ...edit, value: before.bundles?.[edit.field] } as SetBundles;
  const entries = (before.bundles?.cut ?? []).flatMap((cut, at) =>
    isSameCut(cut, edit) ? [{ at, cut }] : [],
  );
  return { ...edit, entries };
}

/** Lengths are compared as they are published, in tenths of a mm. */
export function isSameCut(
  a: Pick<CutPieces, 'yarn' | 'cutMm'>,
  b: Pick<CutPieces, 'yarn' | 'cutMm'>,
): boolean {
  return a.yarn === b.yarn && toTenths(a.cutMm) === toTenths(b.cutMm);
}

/** What is not told has no key. */
function withBundles(
  design: Design,
  bundles: { [K in keyof BundleSettings]: BundleSettings[K] | undefined },
): Design {
  const told = Object.entries(bundles).filter(([, value]) => value !== undefined);
  return { ...design, bundles: told.length > 0 ? (Object.fromEntries(told) as BundleSettings) : undefined };
}
