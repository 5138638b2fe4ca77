/** What a change starts from, until the maker says otherwise: a little off from what the hanging has. */
import { type Chart, flatten } from '../../../shared/chart/chart.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { usualReserveShare } from '../../../shared/tying/usual-reserve.ts';
import { deltaE2000 } from '../../../shared/yarn/colour-difference.ts';
import type { Change, ChangeKind } from './change.ts';

/** `liveMax`: how many strands hang at once as it is; null where that is not known yet. */
type Start = (design: Design, liveMax: number | null) => Change;

const starts: Readonly<Record<ChangeKind, Start>> = {
  'working-length': ({ tying }) => ({
    kind: 'working-length',
    mm: 100 * Math.round((tying.workingLengthMm * 1.3) / 100),
  }),
  carry: ({ tying }) => ({
    kind: 'carry',
    cords: Math.min(limits.columns, Math.ceil(tying.carryMaxCords * 1.5)),
    rows: Math.min(limits.rows, Math.ceil(tying.carryMaxRows * 1.5)),
  }),
  reserve: ({ tying: { reserveShare = 0 } }) => ({
    kind: 'reserve',
    share: reserveShare > 0 ? 0 : usualReserveShare,
  }),
  'live-wish': ({ tying: { liveWish = 9 } }, liveMax) => ({
    kind: 'live-wish',
    strands: Math.max(1, Math.min(liveWish, liveMax ?? liveWish) - 1),
  }),
  merge: (design) => ({ kind: 'merge', ...mostAlike(design) }),
  tidy: () => ({ kind: 'tidy' }),
  gauge: (design) => {
    const { pitchMm, rowHeightMm } = gaugeOf(design);
    return { kind: 'gauge', knotsPer10Cm: tenth(105 / pitchMm), rowsPer10Cm: tenth(105 / rowHeightMm) };
  },
};

export function newChange(kind: ChangeKind, design: Design, liveMax: number | null): Change {
  return starts[kind](design, liveMax);
}

/** Of the yarns that are tied, the two that look most alike; the one of fewer knots goes into the other. */
function mostAlike(design: Design): Pick<Extract<Change, { kind: 'merge' }>, 'from' | 'into'> {
  const knots = knotsByCode(flatten(design));
  const tied = design.yarns.filter(({ id }) => knots[codeOf(id)]! > 0);
  const yarns = (tied.length > 1 ? tied : design.yarns).toSorted(
    (a, b) => knots[codeOf(a.id)]! - knots[codeOf(b.id)]!,
  );
  let best: readonly [Yarn, Yarn] = [yarns[0]!, yarns.at(-1)!];
  let least = Number.POSITIVE_INFINITY;
  for (const [i, from] of yarns.entries()) {
    for (const into of yarns.slice(i + 1)) {
      const apart = deltaE2000(from.color, into.color);
      if (apart < least) [best, least] = [[from, into], apart];
    }
  }
  const [{ id: from }, { id: into }] = best;
  return { from, into };
}

function knotsByCode({ cells }: Chart): Uint32Array {
  const knots = new Uint32Array(256);
  for (const code of cells) knots[code]!++;
  return knots;
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
