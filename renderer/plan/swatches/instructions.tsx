/** What to measure on a swatch, in the order of work. */
import type { Design } from '../../../shared/design/design.ts';
import { swatchInstructions } from '../../../shared/gauge/swatch-instructions.ts';
import { useStudio } from '../../store/use-studio.ts';

export function Instructions({ swatch }: { swatch: Design }) {
  const units = useStudio((state) => state.settings.units);
  return (
    <ol className="swatch-instructions">
      {swatchInstructions(swatch, units).map(({ sentence }) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ol>
  );
}
