/** Dowels as shops have them, and one of the maker's own: what fits on each, and whether this hanging does. */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { dowelOf } from '../../../shared/gauge/dowel.ts';
import { type DowelFit, fittingDowel } from '../../../shared/gauge/fitting-dowel.ts';
import { gaugeOf, sizeOf } from '../../../shared/gauge/gauge.ts';
import { headsOf } from '../../../shared/gauge/heads.ts';
import { nominalDowels } from '../../../shared/gauge/nominal-dowels.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatLength } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';
import { askToResize } from '../../draw/size/size-deeds.tsx';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { OptionalNumberField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { fitWords } from './fit-words.ts';

export function DowelTable({ design }: { design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const [ownMm, setOwnMm] = useState<number>();
  const nominal: readonly number[] = nominalDowels[units === 'us' ? 'us' : 'metric'].lengthsMm;
  const lengths = ownMm === undefined || nominal.includes(ownMm) ? nominal : [...nominal, ownMm];
  const { choices, shortestMm, shortestSurelyMm } = fittingDowel(lengths, design);
  const own = choices.find(({ lengthMm }) => lengthMm === ownMm);
  const gauge = gaugeOf(design);
  const { minLengthMm } = dowelOf(design, gauge);
  const { allMm } = headsOf(design, gauge);
  return (
    <section aria-label="Dowel">
      <h3>Which dowel</h3>
      <p>
        This hanging wants at least {formatLength(minLengthMm, units, { enough: true })}:{' '}
        {shortestWords(shortestMm, shortestSurelyMm, units)}
        {allMm > sizeOf(design, gauge).widthMm &&
          ` Its lark’s heads side by side take ${formatLength(allMm, units)}, more than the picture below them.`}
      </p>
      <div className="figure-fields">
        <OptionalNumberField
          label={`A dowel of your own, in ${lengthUnit(units)}`}
          value={ownMm === undefined ? undefined : lengthIn(ownMm, units)}
          min={lengthIn(1, units)}
          max={lengthIn(10_000, units)}
          hint="Labels are nominal: measure it."
          onChange={(length) => setOwnMm(length === undefined ? undefined : mmFrom(length, units))}
        />
      </div>
      {own && own.cords > 0 && own.cords !== design.columns && (
        <div>
          <button type="button" onClick={() => askToResize({ columns: own.cords, rows: design.rows })}>
            Resize to {counted(own.cords, 'cord')}…
          </button>
        </div>
      )}
      <table className="figures dowels">
        <caption className="unseen">What fits on which dowel</caption>
        <thead>
          <tr>
            <th scope="col">Dowel</th>
            <th scope="col">Holds at most</th>
            <th scope="col">That is</th>
            <th scope="col">This hanging</th>
          </tr>
        </thead>
        <tbody>
          {choices.map((fit) => (
            <tr key={fit.lengthMm} className={fit.lengthMm === ownMm ? 'now' : ''}>
              <th scope="row">{formatLength(fit.lengthMm, units)}</th>
              <td>{cordsWords(fit)}</td>
              <td>{formatLength(fit.widthMm, units)}</td>
              <td>{fitWords(fit, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function shortestWords(shortestMm: number | null, surelyMm: number | null, units: Units): string {
  if (shortestMm === null) return 'none of these is long enough.';
  const shortest = `the shortest of these is ${formatLength(shortestMm, units)}`;
  if (surelyMm === shortestMm) return `${shortest}.`;
  const surely = surelyMm === null ? 'none of these is surely long enough' : formatLength(surelyMm, units);
  return `${shortest}; with the gauge as uncertain as it is, ${surelyMm === null ? surely : `take ${surely}`}.`;
}

/** The number that surely fits is told where it is another. */
function cordsWords({ cords, cordsSurely }: DowelFit): string {
  return cords === cordsSurely ? counted(cords, 'cord') : `${counted(cords, 'cord')}, surely ${cordsSurely}`;
}
