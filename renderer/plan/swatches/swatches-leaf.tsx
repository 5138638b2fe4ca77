/** The maker's swatches, the gauge that they give, and what follows from it. */
import type { Design } from '../../../shared/design/design.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { swatchDesign } from '../../../shared/gauge/swatch-design.ts';
import { swatchDifferences } from '../../../shared/gauge/swatch-differences.ts';
import { formatThickness } from '../../../shared/units/thickness.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { FollowsTable } from './follows-table.tsx';
import { GaugeTable } from './gauge-table.tsx';
import { Instructions } from './instructions.tsx';
import { addSwatch, changeSwatch, makeSwatch, removeSwatch } from './swatch-deeds.tsx';
import { differenceWords, measuredWords, perWords, swatchName } from './swatch-words.ts';
import './swatches.css';

export function SwatchesLeaf() {
  const design = useStudio((state) => state.open?.design);
  const planned = usePlans(shownPlan);
  const problem = usePlans((state) => state.problem);
  if (!design) return null;
  return (
    <LeafPage
      title="Swatches"
      about="Small samples tied with your own hand. Size, cord and yarn follow from what you measure on them; each further swatch makes the figures surer."
    >
      <section aria-label="Swatches measured">
        <SwatchList design={design} />
        <div className="swatch-deeds">
          <button type="button" className="main" onClick={addSwatch}>
            Add a swatch…
          </button>
          <button type="button" onClick={makeSwatch}>
            Make me a swatch…
          </button>
        </div>
      </section>
      {problem && <p className="fault">{problem}</p>}
      <section aria-label="Gauge">
        <GaugeTable design={design} />
        {planned && <FollowsTable materials={planned.materials} design={design} />}
      </section>
      <details className="what-to-measure">
        <summary>What to measure on a swatch</summary>
        <Instructions swatch={swatchDesign(design)} />
      </details>
    </LeafPage>
  );
}

/** Its place among the swatches is `index`, from 0. */
function Told({ swatch, index }: { swatch: Swatch; index: number }) {
  const units = useStudio((state) => state.settings.units);
  return (
    <li>
      <div>
        <strong>As written, not measured</strong>
        <p>{perWords(swatch, units)}.</p>
        <p className="quiet">The size follows from this until it is removed.</p>
      </div>
      <button type="button" onClick={() => runCommand('hanging')}>
        Change…
      </button>
      <button type="button" aria-label="Remove the gauge as written" onClick={() => removeSwatch(index)}>
        Remove
      </button>
    </li>
  );
}

function SwatchList({ design }: { design: Design }) {
  const units = useStudio((state) => state.settings.units);
  if (design.swatches.length === 0) {
    return <p>No swatch yet. Tension is personal: tie one before you buy and cut.</p>;
  }
  const differences = swatchDifferences(design);
  return (
    <ol className="swatch-list">
      {[...design.swatches.entries()].map(([index, swatch]) => {
        const name = swatchName(swatch, index);
        if (swatch.told) return <Told key={index} swatch={swatch} index={index} />;
        return (
          <li key={index}>
            <div>
              <strong>{name}</strong> {swatch.date && <span className="quiet small">{swatch.date}</span>}
              <p>{measuredWords(swatch, units)}.</p>
              <p className="quiet">
                {[differenceWords(differences[index]!), otherWords(swatch, design)].filter(Boolean).join(' ')}
              </p>
            </div>
            <button type="button" aria-label={`Change ${name}`} onClick={() => changeSwatch(index)}>
              Change…
            </button>
            <button type="button" aria-label={`Remove ${name}`} onClick={() => removeSwatch(index)}>
              Remove
            </button>
          </li>
        );
      })}
    </ol>
  );

  function otherWords({ cordDiameterMm, yarnDiameterMm }: Swatch, { cord, yarns, ground }: Design): string {
    const groundMm = yarns.find(({ id }) => id === ground)?.diameterMm;
    const cordMm = cordDiameterMm ?? cord.diameterMm;
    const yarnMm = yarnDiameterMm ?? groundMm;
    if (yarnMm === undefined || (cordMm === cord.diameterMm && yarnMm === groundMm)) return '';
    const show = (mm: number) => formatThickness(mm, units);
    return `It was tied with ${show(cordMm)} cord and ${show(yarnMm)} yarn.`;
  }
}
