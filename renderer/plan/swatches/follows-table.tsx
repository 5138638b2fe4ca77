/** What follows from the gauge: sizes and needs, how sure they are, and what they would be by thickness alone. */
import type { Design } from '../../../shared/design/design.ts';
import { cutList } from '../../../shared/gauge/cords.ts';
import { dowelOf } from '../../../shared/gauge/dowel.ts';
import { gaugeOf, sizeOf } from '../../../shared/gauge/gauge.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { usedAtGaugeMm } from '../../../shared/materials/used-at-gauge.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatUncertain } from '../../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { useStudio } from '../../store/use-studio.ts';
import { usePlans } from '../plans/plans.ts';

export function FollowsTable({ materials, design }: { materials: Materials; design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const settled = usePlans((state) => state.settled);
  const { finished, dowel, cords, totals, yarns } = materials;
  const model = gaugeOf({ ...design, swatches: [] });
  const size = sizeOf(design, model);
  const length = (mm: number) => formatLength(mm, units);
  const enoughLength = (mm: number) => formatLength(mm, units, { enough: true });
  const yards = (mm: number) => formatYarnLength(mm, units, { enough: true });
  const rows: readonly (readonly [name: string, figure: string, byThickness: string])[] = [
    ['Width', formatUncertain(finished.uncertain.widthMm, length), length(size.widthMm)],
    [
      'Knotted height',
      formatUncertain(finished.uncertain.knottedHeightMm, length),
      length(size.knottedHeightMm),
    ],
    [
      'Dowel, at least',
      formatUncertain(dowel.uncertain.minLengthMm, enoughLength),
      enoughLength(dowelOf(design, model).minLengthMm),
    ],
    ['Cord to cut', formatUncertain(cords.uncertain.totalMm, yards), yards(cutList(design, model).totalMm)],
    [
      'Yarn used',
      formatUncertain(totals.uncertain.yarnUsedMm, yards),
      yards(usedAtGaugeMm(design, yarns, model)),
    ],
  ];
  const hasGauge = design.swatches.length > 0;
  return (
    <table className="figures follows-table" aria-busy={!settled}>
      <caption className="unseen">What follows from the gauge</caption>
      <thead>
        <tr>
          <th scope="col">What follows</th>
          <th scope="col">{hasGauge ? 'By your gauge' : 'Estimate'}</th>
          {hasGauge && <th scope="col">By thickness alone</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, figure, byThickness]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="now">{figure}</td>
            {hasGauge && <td>{byThickness}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
