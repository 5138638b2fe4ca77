/** What is shown over the chart, in figures, with the key to its signs. The strand that is chosen has its own part. */

import type { ReactNode } from 'react';
import { counted } from '../../../shared/units/counted.ts';
import { SidePart } from '../../draw/side-part.tsx';
import { PlanKey } from '../key/plan-key.tsx';
import type { Planned } from '../plans/planned.ts';
import { type PlanView, shownPlan, usePlans } from '../plans/plans.ts';
import { LongCarriesPart } from './long-carries-part.tsx';
import { StrandPart } from './strand-part.tsx';
import { WorstRowsPart } from './worst-rows-part.tsx';

const parts: Readonly<
  Record<PlanView, { readonly title: string; readonly body: ((planned: Planned) => ReactNode) | null }>
> = {
  strands: { title: 'Strands', body: null },
  live: { title: 'Hanging at once', body: (planned) => <p>{liveWords(planned)}</p> },
  'loose-ends': { title: 'Loose ends', body: (planned) => <p>{looseEndWords(planned)}</p> },
  'long-carries': { title: 'Long carries', body: (planned) => <LongCarriesPart tables={planned.tables} /> },
  'worst-rows': { title: 'Worst rows', body: (planned) => <WorstRowsPart rows={planned.rows} /> },
};

export function ViewPart() {
  const view = usePlans((state) => state.view);
  const planned = usePlans(shownPlan);
  const { title, body } = parts[view];
  return (
    <>
      <SidePart title={title}>
        {body === null ? (
          <>
            <StrandPart />
            <PlanKey />
          </>
        ) : (
          <>
            <PlanKey />
            {planned ? body(planned) : <p className="quiet">This comes with the plan.</p>}
          </>
        )}
      </SidePart>
      {view !== 'strands' && (
        <SidePart title="Strand">
          <StrandPart />
        </SidePart>
      )}
    </>
  );
}

function liveWords({ figures, rows }: Planned): string {
  const { liveMax } = figures;
  if (liveMax === 0) return 'No strand hangs from one row to the next.';
  const worst = rows.filter(({ live }) => live === liveMax);
  const mean = rows.slice(0, -1).reduce((sum, { live }) => sum + live, 0) / Math.max(1, rows.length - 1);
  const first = worst[0]!.row;
  const also = worst.length > 1 ? `, and below ${worst.length - 1} more` : '';
  return `At most ${counted(liveMax, 'strand hangs', 'strands hang')} at the back at once, below row ${first}${also}; ${mean.toFixed(1)} on average.`;
}

function looseEndWords({ figures, tables }: Planned): string {
  const { pieces, strands } = tables;
  const joins = pieces.count - strands.count;
  const ends = counted(figures.looseEnds, 'loose end');
  if (pieces.count === 0) return 'No loose end: nothing is tied.';
  const two =
    pieces.count === 1
      ? 'at both ends of the one piece'
      : `two for each of ${counted(pieces.count, 'piece')}`;
  const joined =
    joins === 0
      ? 'None is joined to another.'
      : `${counted(joins, 'piece is', 'pieces are')} joined, where two ends hang side by side.`;
  return `${ends}: ${two}. ${joined}`;
}
