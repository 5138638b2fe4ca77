/** What the small design will be, and what to measure on it. */
import type { Design } from '../../../shared/design/design.ts';
import { counted } from '../../../shared/units/counted.ts';
import { useStudio } from '../../store/use-studio.ts';
import { Instructions } from './instructions.tsx';

export function MakeSwatchSheet({ swatch, answer }: { swatch: Design; answer: (sure: true) => void }) {
  const title = useStudio((state) => state.open?.design.title ?? '');
  return (
    <div className="sheet">
      <h2>Make me a swatch</h2>
      <p>
        A small chart of {counted(swatch.columns, 'cord')} and {counted(swatch.rows, 'row')} opens as a new
        design, with the cord and yarns of “{title}”. Tie it as you will tie the hanging, then enter what you
        measure on the Swatches leaf of “{title}”.
      </p>
      <Instructions swatch={swatch} />
      <div className="answers">
        <button type="button" className="main" data-first onClick={() => answer(true)}>
          Open the swatch
        </button>
      </div>
    </div>
  );
}
