/** Yarns that a buyer takes for one another where they touch. */
import { codeOf } from '../../design/codes.ts';
import { counted } from '../../units/counted.ts';
import { type AlikePair, alikePairs } from '../../yarn/alike-pairs.ts';
import { placesOf } from '../../yarn/touching.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding, Place } from './finding.ts';

export function aboutColours({ design, chart }: Pick<PatternInput, 'design' | 'chart'>): Finding[] {
  const names = new Map(design.yarns.map(({ id, name }) => [codeOf(id), name]));
  const firstPlace = ({ a, b }: AlikePair): Place => {
    const cell = placesOf(chart, a, b).indexOf(1);
    return { on: 'cell', row: Math.floor(cell / chart.columns) + 1, cord: (cell % chart.columns) + 1 };
  };
  return alikePairs(chart, design.yarns).map((pair): Finding => {
    const both = `“${names.get(pair.a)}” and “${names.get(pair.b)}”`;
    const touch = `They touch in ${counted(pair.count, 'place')}.`;
    const seen = new Set(pair.alike.map(({ sight }) => sight));
    const place = firstPlace(pair);
    if (seen.has('normal')) {
      return {
        kind: 'alike',
        weight: 'doubt',
        sentence: `${both} look alike. ${touch}`,
        mend: 'Choose colours that lie further apart, or tell buyers that the picture is meant to be quiet there.',
        place,
      };
    }
    if (seen.has('grey')) {
      return {
        kind: 'alike-in-print',
        weight: 'note',
        sentence: `${both} print as the same grey. ${touch}`,
        mend: 'The symbols tell them apart. Offer the copy in greys or in symbols besides.',
        place,
      };
    }
    return {
      kind: 'alike-with-deficiency',
      weight: 'note',
      sentence: `${both} look alike to some eyes. ${touch}`,
      mend: 'The symbols tell them apart. One of the two a little lighter or darker helps.',
      place,
    };
  });
}
