/** What the lines and signs over the chart mean: only those that are shown. */
import type { ReactNode } from 'react';
import type { Pin } from '../../shared/design/schema.ts';
import { useStudio } from '../store/use-studio.ts';
import { shownPins } from './pins/shown-pins.ts';
import { chosenStrand } from './plan-deeds.ts';
import { type PlanView, shownPlan, usePlans } from './plans/plans.ts';

type Entry = readonly [picture: ReactNode, words: string];

const attach: Entry = [haloed('hollow', 'M12 3.5a4.5 4.5 0 1 0 .01 0Z'), 'a piece begins'];
const join: Entry = [haloed('hollow', 'M12 2.5 17.5 8 12 13.5 6.5 8Z'), 'joined'];
const end: Entry = [haloed('full', 'M8 4h8v8H8Z'), 'ends'];
const front: Entry = [<path key="f" d="M1 8h22" />, 'in front'];
const behind: Entry = [<path key="b" className="behind" d="M1 8h22" />, 'carried behind'];

const strandEntries = [attach, join, end, front, behind];

const entries: Readonly<Record<PlanView, readonly Entry[]>> = {
  strands: [],
  live: [],
  'loose-ends': [attach, end],
  'long-carries': [behind],
  'worst-rows': [],
};

const pinEntries: Readonly<Record<Pin['kind'], Entry>> = {
  cut: [twoToned('M12 2v12'), 'pinned: cut'],
  'no-carry': [twoToned('M7 3 17 13M7 13 17 3'), 'pinned: no carry'],
  carry: [twoToned('M3 8h18l-6-5M21 8l-6 5'), 'pinned: carry'],
};
const notObeyed: Entry = [
  <text key="!" className="mark" x="12" y="13">
    !
  </text>,
  'can’t be obeyed',
];

export function PlanKey() {
  const view = usePlans((state) => state.view);
  const hasStrand = usePlans(() => chosenStrand() !== null);
  const pins = shownPins(
    useStudio((state) => state.open?.design.pins),
    usePlans(shownPlan),
  );
  const kinds = new Set(pins.map(({ pin }) => pin.kind));
  const shown = [
    ...(hasStrand ? strandEntries : entries[view]),
    ...Array.from(kinds, (kind) => pinEntries[kind]),
    ...(pins.some(({ fault }) => fault !== '') ? [notObeyed] : []),
  ];
  if (shown.length === 0) return null;
  return (
    <ul className="plan-key" aria-label="Signs on the chart">
      {shown.map(([picture, words]) => (
        <li key={words}>
          <svg width="24" height="16" aria-hidden="true">
            {picture}
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
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
