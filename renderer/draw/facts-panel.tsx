/** This hanging: what it takes, live; hours and loose ends stand with what it costs. Figures that rest on an estimate say so; unsettled ones say 'at most'. */

import type { Materials } from '../../shared/materials/materials.ts';
import { formatLength } from '../../shared/units/length.ts';
import { formatMass } from '../../shared/units/mass.ts';
import type { Units } from '../../shared/units/units.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import { runCommand } from '../shell/command-bus.ts';
import { useStudio } from '../store/use-studio.ts';

export function FactsPanel() {
  const facts = useStudio((state) => state.facts);
  const units = useStudio((state) => state.settings.units);
  return (
    <div className="facts">
      {facts?.problem && <p className="fault">{facts.problem}</p>}
      {facts?.materials && (
        <dl aria-busy={!facts.settled}>
          {figures(facts.materials, units).map(([name, figure]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{figure}</dd>
            </div>
          ))}
        </dl>
      )}
      {!facts && <p className="quiet">Counting…</p>}
      {facts?.materials?.gauge.source === 'estimate' && (
        <p className="quiet small">Sizes and yarn are estimates (≈) until you measure a swatch.</p>
      )}
      <button type="button" onClick={() => runCommand('hanging')}>
        Size, cords, dowel…
      </button>
      <button type="button" onClick={() => runCommand('fringe')}>
        Shape the fringe…
      </button>
    </div>
  );
}

function figures(materials: Materials, units: Units): [string, string][] {
  const { finished, cords, dowel, totals, gauge } = materials;
  const size = gauge.source === 'estimate' ? '≈ ' : '';
  const yarn = gauge.yarnFactorSource === 'estimate' ? '≈ ' : '';
  return [
    [
      'Knotted',
      `${size}${formatLength(finished.widthMm, units)} × ${formatLength(finished.knottedHeightMm, units)}`,
    ],
    ['With fringe', `${size}${formatLength(finished.heightWithFringeMm, units)} long`],
    ['Cords', `${materials.columns} (${cords.cutCords} cut)`],
    ['Cord to cut', `${size}${formatYarnLength(cords.totalMm, units, { enough: true })}`],
    ['Dowel', `at least ${formatLength(dowel.minLengthMm, units, { enough: true })}`],
    ['Knots', totals.knots.toLocaleString('en')],
    ['Yarn to cut', `${yarn}${formatYarnLength(totals.yarnCutMm, units, { enough: true })}`],
    ['Hanging at once', `${totals.liveMax} at most`],
    ['Mass', `≈ ${formatMass(totals.massG, units, { enough: true })}`],
  ];
}
