/** What it costs: what makes this picture slow to tie, live, and where; and a way to make it cheaper. */
import { useEffect } from 'react';
import type { PictureCost } from '../../../shared/chart/cost/picture-cost.ts';
import type { CommandId } from '../../../shared/commands.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { useFindings } from '../../planning/findings.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { Marks } from '../../store/views.ts';
import { keepMarking } from './marking.ts';
import './cost.css';

export function CostPanel() {
  const cost = useFindings((found) => found.cost);
  const isSettled = useStudio((state) => state.facts?.settled ?? false);
  const marks = useStudio((state) => state.views.marks);
  useEffect(keepMarking, []);
  return (
    <div className="cost">
      {!cost && <p className="quiet">Counting…</p>}
      {cost && (
        <dl aria-busy={!isSettled}>
          {figures.map(({ name, figure, tip, show }) => (
            <div key={name} title={tip}>
              <dt>{name}</dt>
              <dd>{figure(cost)}</dd>
              <dd>
                {show && (
                  <button
                    type="button"
                    className="small"
                    aria-pressed={marks === show.marks}
                    aria-label={`Show: ${name}`}
                    onClick={() => runCommand(show.command)}
                  >
                    Show
                  </button>
                )}
              </dd>
            </div>
          ))}
        </dl>
      )}
      <button type="button" disabled={!cost || cost.loneKnots === 0} onClick={() => runCommand('tidy')}>
        Tidy lone knots…
      </button>
      {cost && cost.loneKnots > 0 && (
        <p className="quiet small">
          A slanting line one knot thin is made of lone knots: tidying takes it away.
        </p>
      )}
    </div>
  );
}

interface Figure {
  readonly name: string;
  readonly figure: (cost: PictureCost) => string;
  readonly tip: string;
  readonly show?: { readonly marks: Marks; readonly command: CommandId };
}

const figures: readonly Figure[] = [
  {
    name: 'Lone knots',
    figure: ({ loneKnots }) => loneKnots.toLocaleString('en'),
    tip: 'Knots with none of their yarn beside, above or below them',
    show: { marks: 'lone-knots', command: 'mark-lone-knots' },
  },
  {
    name: 'Runs of one knot',
    figure: ({ shortRuns }) => shortRuns.toLocaleString('en'),
    tip: 'Runs shorter than two: the yarn is changed before and after a single knot',
    show: { marks: 'short-runs', command: 'mark-short-runs' },
  },
  {
    name: 'Loose ends',
    figure: ({ looseEnds }) => looseEnds.toLocaleString('en'),
    tip: 'Tails to be tied off or trimmed, where pieces begin and end',
    show: { marks: 'loose-ends', command: 'mark-loose-ends' },
  },
  {
    name: 'Strands',
    figure: ({ strands }) => strands.toLocaleString('en'),
    tip: 'Lines of yarn, each from its first tail to its last',
  },
  {
    name: 'Hours',
    figure: ({ seconds }) => `≈ ${formatTime(seconds)}`,
    tip: 'The whole work, at your own rates',
  },
];
