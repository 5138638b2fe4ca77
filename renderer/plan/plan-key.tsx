/** What the lines and signs over the chart mean: only those that are shown. */
import type { ReactNode } from 'react';
import { chosenStrand } from './plan-deeds.ts';
import { type PlanView, usePlans } from './plans/plans.ts';

type Entry = readonly [picture: ReactNode, words: string];

const attach: Entry = [<circle key="a" className="hollow" cx="12" cy="8" r="4.5" />, 'a piece begins'];
const join: Entry = [<path key="j" className="hollow" d="M12 2.5 17.5 8 12 13.5 6.5 8Z" />, 'joined'];
const end: Entry = [<rect key="e" className="full" x="8" y="4" width="8" height="8" />, 'ends'];
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

export function PlanKey() {
  const view = usePlans((state) => state.view);
  const hasStrand = usePlans(() => chosenStrand() !== null);
  const shown = hasStrand ? strandEntries : entries[view];
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
