/** The gauge as the swatches give it: each quantity, how sure it is, and what it rests on. */
import type { Design } from '../../../shared/design/design.ts';
import { gaugeSpread } from '../../../shared/gauge/gauge-spread.ts';
import { gaugeFigures } from '../../../shared/materials/gauge-figures.ts';
import { mmPerInch } from '../../../shared/units/length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { decimal } from '../../../shared/units/round.ts';
import { formatUncertain, type Uncertain } from '../../../shared/units/uncertain.ts';
import { inUnits, type Units } from '../../../shared/units/units.ts';
import { useStudio } from '../../store/use-studio.ts';
import { gaugeOver } from '../leaves/gauge-over.ts';

/** No plan is needed for it, so it follows what is written at once. */
export function GaugeTable({ design }: { design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const { uncertain, basis } = gaugeFigures(design, gaugeSpread(design));
  const rows: readonly (readonly [name: string, figure: string, basis: string])[] = [
    ['Cords across', countWords(uncertain.pitchMm, units), basis.size.sentence],
    ['Rows down', countWords(uncertain.rowHeightMm, units), basis.size.sentence],
    ['Yarn in a knot', formatUncertain(uncertain.knotMm, (mm) => knotWords(mm, units)), basis.yarn.sentence],
    ['Take-up of cord', takeUpWords(uncertain.takeUp), basis.cord.sentence],
  ];
  return (
    <table className="figures gauge-table">
      <caption className="unseen">The gauge, how sure it is and what it rests on</caption>
      <thead>
        <tr>
          <th scope="col">Gauge</th>
          <th scope="col">Figure</th>
          <th scope="col">What it rests on</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, figure, sentence], i) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="now">{figure}</td>
            {sentence !== rows[i - 1]?.[2] && <td rowSpan={alikeFrom(rows, i)}>{sentence}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** How many rows of the table, from `i` on, rest on the same: what it is stands once beside them all. */
function alikeFrom(rows: readonly (readonly [string, string, string])[], i: number): number {
  const other = rows.findIndex(([, , sentence], j) => j > i && sentence !== rows[i]![2]);
  return (other === -1 ? rows.length : other) - i;
}

/** '20.4 per 10 cm ± 3 %'. */
function countWords({ value, share }: Uncertain, units: Units): string {
  const per = (each: Units) => {
    const over = gaugeOver(each);
    return `${decimal(over.mm / value, 0.1)} per ${over.words}`;
  };
  const figure = inUnits(
    units,
    () => per('metric'),
    () => per('us'),
  );
  return share === 0 ? figure : `${figure} ± ${formatPercent(share, { enough: true })}`;
}

/** '36.8 mm', '1.45 in': a swatch tells it better than the marks of a ruler. */
function knotWords(mm: number, units: Units): string {
  return inUnits(
    units,
    () => `${decimal(mm, 0.1)} mm`,
    () => `${decimal(mm / mmPerInch, 0.01)} in`,
  );
}

/** A share of a share would puzzle: both ends are told. */
function takeUpWords({ value, low, high }: Uncertain): string {
  if (low === high) return formatPercent(value);
  return `${formatPercent(value)} (${formatPercent(low)} to ${formatPercent(high)})`;
}
