/** What a change starts from, until the maker says otherwise: a little off from what the design has. */
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import type { Change, ChangeKind } from './change.ts';

const starts: Readonly<Record<ChangeKind, (design: Design) => Change>> = {
  'working-length': ({ tying }) => ({
    kind: 'working-length',
    mm: 100 * Math.round((tying.workingLengthMm * 1.3) / 100),
  }),
  carry: ({ tying }) => ({
    kind: 'carry',
    cords: Math.min(limits.columns, Math.ceil(tying.carryMaxCords * 1.5)),
    rows: Math.min(limits.rows, Math.ceil(tying.carryMaxRows * 1.5)),
  }),
  reserve: ({ tying: { reserveShare = 0 } }) => ({ kind: 'reserve', share: reserveShare > 0 ? 0 : 0.03 }),
  'live-wish': ({ tying: { liveWish = 9 } }) => ({ kind: 'live-wish', strands: Math.max(1, liveWish - 1) }),
  merge: ({ yarns, ground }) => {
    const from = yarns.findLast(({ id }) => id !== ground) ?? yarns[0]!;
    const into = yarns.findLast(({ id }) => id !== from.id) ?? from;
    return { kind: 'merge', from: from.id, into: into.id };
  },
  tidy: () => ({ kind: 'tidy' }),
  gauge: (design) => {
    const { pitchMm, rowHeightMm } = gaugeOf(design);
    return { kind: 'gauge', knotsPer10Cm: tenth(105 / pitchMm), rowsPer10Cm: tenth(105 / rowHeightMm) };
  },
};

export function newChange(kind: ChangeKind, design: Design): Change {
  return starts[kind](design);
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
