/** What a gauge asks for that no sheet or shop gives. */
import { nominalDowels } from '../../gauge/nominal-dowels.ts';
import { printedAspect } from '../chart-pages/printed-aspect.ts';
import { figuresIn } from '../flow/figures.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

export function aboutSize({ materials, units }: Pick<PatternInput, 'materials' | 'units'>): Finding[] {
  return [...proportions(materials), ...dowel(materials, units)];
}

function proportions({ gauge }: PatternInput['materials']): Finding[] {
  if (printedAspect(gauge) === gauge.pitchMm / gauge.rowHeightMm) return [];
  return [
    {
      kind: 'proportions-lost',
      weight: 'doubt',
      sentence:
        'The knots of this gauge are so narrow or so low that the chart can’t show their proportions.',
      mend: 'Measure the swatch once more.',
      place: { on: 'setting', setting: 'gauge' },
    },
  ];
}

function dowel(
  { dowel: { minLengthMm } }: PatternInput['materials'],
  units: PatternInput['units'],
): Finding[] {
  const longest = nominalDowels[units === 'us' ? 'us' : 'metric'].lengthsMm.at(-1)!;
  if (minLengthMm <= longest) return [];
  const { length, enough } = figuresIn(units, 'en');
  return [
    {
      kind: 'dowel-long',
      weight: 'note',
      sentence: `The dowel must be at least ${enough.length(minLengthMm)} long, and the longest that shops usually have is ${length(longest)}.`,
      mend: 'Tell buyers where to get one, or make the hanging narrower; the Plan screen shows under Sizes what fits on which dowel.',
      place: { on: 'setting', setting: 'dowel' },
    },
  ];
}
