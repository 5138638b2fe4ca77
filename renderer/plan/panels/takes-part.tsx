/**
 * What the hanging takes by this plan, beside what it took before the last change of a setting, and beside a careful
 * person who doesn't look ahead. Plans are compared with their like: quick with quick, full with full.
 */
import { grouped } from '../../../shared/units/grouped.ts';
import { signed } from '../../../shared/units/signed.ts';
import { formatTime, timeDifference } from '../../../shared/units/time.ts';
import { formatUncertain } from '../../../shared/units/uncertain.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength, yarnLengthDifference } from '../../../shared/units/yarn-length.ts';
import { useStudio } from '../../store/use-studio.ts';
import { loosePiecesWords } from '../money/need-words.ts';
import { nothingTied } from '../plan-words.ts';
import { comparedWithLast } from '../plans/compared-with-last.ts';
import type { Figures } from '../plans/figures.ts';
import { usePlans } from '../plans/plans.ts';
import { carefulWords } from './careful-words.ts';

interface Row {
  readonly key: keyof Figures;
  readonly name: string;
  readonly shows: (value: number, units: Units) => string;
  /** By how much what is shown differs; less is better in all of them. */
  readonly differs: (before: number, after: number, units: Units) => string;
}

const count = (value: number) => grouped(String(value));
const counts = { shows: count, differs: (before: number, after: number) => signed(after - before, count) };
const enough = { enough: true };
const rows: readonly Row[] = [
  { key: 'pieces', name: 'Pieces', ...counts },
  { key: 'looseEnds', name: 'Loose ends', ...counts },
  {
    key: 'yarnCutMm',
    name: 'Yarn to cut',
    shows: (mm, units) => formatYarnLength(mm, units, enough),
    differs: (before, after, units) => yarnLengthDifference(before, after, units, enough),
  },
  {
    key: 'carriedMm',
    name: 'Carries and turns',
    shows: formatYarnLength,
    differs: yarnLengthDifference,
  },
  { key: 'liveMax', name: 'Hanging at once', ...counts },
  {
    key: 'seconds',
    name: 'Hours',
    shows: (seconds) => `≈ ${formatTime(seconds)}`,
    differs: timeDifference,
  },
];

export function TakesPart() {
  const quick = usePlans((state) => state.quick);
  const full = usePlans((state) => state.full);
  const last = usePlans((state) => state.last);
  const careful = usePlans((state) => state.careful);
  const settled = usePlans((state) => state.settled);
  const problem = usePlans((state) => state.problem);
  const design = useStudio((state) => state.open?.design);
  const units = useStudio((state) => state.settings.units);
  const shown = full ?? quick;
  if (!shown) return <p className={problem ? 'fault' : 'quiet'}>{problem || 'Planning…'}</p>;
  if (shown.figures.pieces === 0) return <p className="quiet">{nothingTied('take')}</p>;
  const now = shown.figures;
  const pair = comparedWithLast({ quick, full, last });
  const { gauge, totals, yarns } = shown.materials;
  const used = formatUncertain(totals.uncertain.yarnUsedMm, (mm) => formatYarnLength(mm, units, enough));
  return (
    <>
      <table className="figures compared" aria-busy={!settled}>
        <caption className="unseen">
          What it takes now, what the last change of a setting did, and against a careful person
        </caption>
        <thead>
          <tr>
            <td />
            <th scope="col">Now</th>
            <th scope="col">Last change</th>
            <th scope="col">Careful person</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, shows, differs }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td className="now">{shows(now[key], units)}</td>
              <td>{pair ? differs(pair.last[key], pair.now[key], units) : '–'}</td>
              <td>{careful ? differs(careful[key], now[key], units) : '…'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {design && <p className="takes-note quiet">{carefulWords(design)}</p>}
      <p className="takes-note quiet">
        Used of it: {used}, in 95 of 100 cases. {loosePiecesWords(yarns, units)}
        {gauge.basis.yarn.from === 'estimate' && ' Yarn in a knot is not yet measured.'}
      </p>
    </>
  );
}
