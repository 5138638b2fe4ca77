/** Cord and dowel to buy, what else costs money, and what the hanging will weigh on the wall. */
import type { Design } from '../../../shared/design/design.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { careWords } from '../../../shared/pattern/words/care-words.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatThickness } from '../../../shared/units/thickness.ts';
import { formatUncertain } from '../../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { useStudio } from '../../store/use-studio.ts';
import { MoneyFieldList } from './money-field-list.tsx';
import { materialPrices } from './money-fields.ts';

export function CordAndDowel({ materials, design }: { materials: Materials; design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const { cords, dowel, totals } = materials;
  const enough = { enough: true };
  const massWords = formatUncertain(totals.uncertain.massG, (g) => formatMass(g, units, enough));
  return (
    <>
      <section aria-label="Cord and dowel">
        <h3>Cord and dowel</h3>
        <p>
          {counted(cords.cutCords, 'cut cord')} of {formatThickness(cords.diameterMm, units)} cord,{' '}
          {formatUncertain(cords.uncertain.totalMm, (mm) => formatYarnLength(mm, units, enough))} and{' '}
          {formatMass(cords.massG, units, enough)} in all.
          {cords.spareLegs === 1 &&
            ' One leg is spare: leave it hanging behind the work, and trim it at the end.'}
        </p>
        <p>
          A dowel {formatThickness(dowel.diameterMm, units)} thick and at least{' '}
          {formatUncertain(dowel.uncertain.minLengthMm, (mm) => formatLength(mm, units, enough))} long.
        </p>
        <MoneyFieldList fields={materialPrices} design={design} />
      </section>
      <section aria-label="Mass">
        <h3>On the wall</h3>
        <p>{careWords.en.hangingUp(massWords).text}</p>
      </section>
    </>
  );
}
