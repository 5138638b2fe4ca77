/** Each sign over the chart with its words, by the view that it belongs to. */
import type { ReactNode } from 'react';
import type { Pin } from '../../../shared/design/schema.ts';
import type { PlanView } from '../plans/plans.ts';
import type { RowMeasure } from '../plans/row-facts.ts';

/** What the key depends on. */
interface KeyQuestion {
  readonly view: PlanView;
  readonly hasStrand: boolean;
  /** True while the tying order is followed, before its end. */
  readonly isTying: boolean;
  readonly rowsBy: RowMeasure;
  readonly pins: ReadonlySet<Pin['kind']>;
  readonly hasPinFault: boolean;
}

/** `picture` fills a box of 24 by 16. */
export type KeyEntry = readonly [picture: ReactNode, words: string];

const attach: KeyEntry = [haloed('hollow', 'M12 3.5a4.5 4.5 0 1 0 .01 0Z'), 'a piece begins'];
const join: KeyEntry = [haloed('hollow', 'M12 2.5 17.5 8 12 13.5 6.5 8Z'), 'joined'];
const end: KeyEntry = [haloed('full', 'M8 4h8v8H8Z'), 'ends'];
const front: KeyEntry = [<path key="f" d="M1 8h22" />, 'in front'];
const behind: KeyEntry = [<path key="b" className="behind" d="M1 8h22" />, 'carried behind'];
const piecesInTurn: KeyEntry = [
  halves('key-tone', 'key-tone other'),
  'every other piece is lighter or darker',
];
const number: KeyEntry = [
  <text key="n" className="mark" x="12" y="13">
    4
  </text>,
  'number of the piece',
];
const inPart: KeyEntry = [
  <g key="c">
    <rect className="key-heat" x="2" y="0" width="20" height="16" />
    <text className="mark" x="12" y="13">
      7
    </text>
  </g>,
  'so many in this part; come nearer to see each',
];
const strandsInTurn: KeyEntry = [
  halves('key-quiet', 'key-quiet more'),
  'every other strand of a yarn, paler',
];
const allStrands: readonly KeyEntry[] = [
  [<path key="y" className="key-yarn" d="M1 8h22" />, 'a strand, in its yarn’s colour'],
  [<path key="z" className="key-yarn behind" d="M1 8h22" />, 'carried behind'],
  [attach[0], 'a strand begins'],
  [end[0], 'a strand ends'],
];
const oneStrand: readonly KeyEntry[] = [attach, join, end, front, behind, number, piecesInTurn];

const tying: readonly KeyEntry[] = [
  [<rect key="u" className="key-untied" x="2" y="2" width="20" height="12" />, 'not tied yet'],
  [twoToned('M7 3h10v10H7Z'), 'the next knot'],
];

const worst: KeyEntry = [
  <g key="w">
    <path d="M7 4h16M7 12h16" />
    <path className="key-accent" d="M6 8 0 4v8Z" />
  </g>,
  'a row that takes the most, with its number',
];

const bars: Readonly<Record<RowMeasure, string>> = {
  live: 'strands that hang below the row',
  changes: 'changes of the strand in hand',
  pieces: 'pieces that begin in the row',
};

const pinEntries: Readonly<Record<Pin['kind'], KeyEntry>> = {
  cut: [twoToned('M12 2v12'), 'pinned: cut'],
  'no-carry': [twoToned('M7 3 17 13M7 13 17 3'), 'pinned: no carry'],
  carry: [twoToned('M3 8h18l-6-5M21 8l-6 5'), 'pinned: carry'],
};
const notObeyed: KeyEntry = [
  <text key="!" className="mark" x="12" y="13">
    !
  </text>,
  'can’t be obeyed',
];

/** In the order in which they are shown, each once. */
export function keyEntries({
  view,
  hasStrand,
  isTying,
  rowsBy,
  pins,
  hasPinFault,
}: KeyQuestion): readonly KeyEntry[] {
  const bar: KeyEntry = [<path key="bar" className="key-accent" d="M2 4h18v8H2Z" />, bars[rowsBy]];
  const ofView: Readonly<Record<PlanView, readonly KeyEntry[]>> = {
    strands: hasStrand ? [] : [...(isTying ? [] : [strandsInTurn]), ...allStrands],
    live: [],
    'loose-ends': [attach, end, inPart],
    'long-carries': [behind, inPart],
    'worst-rows': [worst, bar],
  };
  const all = [
    ...ofView[view],
    ...(hasStrand ? oneStrand : []),
    ...(isTying ? tying : []),
    ...Array.from(pins, (kind) => pinEntries[kind]),
    ...(hasPinFault ? [notObeyed] : []),
  ];
  return [...new Map(all.map((entry) => [entry[1], entry])).values()];
}

/** A sign on a ground of its own, since its dark tone would be lost on a dark panel. */
function haloed(tone: 'hollow' | 'full', outline: string): ReactNode {
  return (
    <g key={outline}>
      <path className="halo" d={outline} />
      <path className={tone} d={outline} />
    </g>
  );
}

/** A line on a light ground, as pins are drawn. */
function twoToned(line: string): ReactNode {
  return (
    <g key={line}>
      <path className="pin-halo" d={line} />
      <path className="pin-line" d={line} />
    </g>
  );
}

/** Two tones side by side. */
function halves(left: string, right: string): ReactNode {
  return (
    <g key={left}>
      <rect className={left} x="1" y="2" width="11" height="12" />
      <rect className={right} x="12" y="2" width="11" height="12" />
    </g>
  );
}
