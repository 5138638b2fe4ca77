/** Yarns that a buyer takes for one another where they touch. */
import { codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { counted } from '../../units/counted.ts';
import { type AlikePair, alikePairs } from '../../yarn/alike-pairs.ts';
import { placesOf, type TouchingPair, touchingPairs } from '../../yarn/touching.ts';
import { sharedGreys } from '../chart-pages/shared-greys.ts';
import type { Copy } from '../copy.ts';
import { inQuotes } from '../flow/in-quotes.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding, Place } from './finding.ts';

type Input = Pick<PatternInput, 'design' | 'chart'> & { readonly copy: Pick<Copy, 'ink'> };

export function aboutColours(input: Input): Finding[] {
  const { design, chart, copy } = input;
  const found = alikePairs(chart, design.yarns).flatMap((pair) => ofPair(input, pair));
  return copy.ink === 'grey' ? [...found, ...sameGreys(input)] : found;
}

function ofPair(input: Input, pair: AlikePair): Finding[] {
  const seen = new Set(pair.alike.map(({ sight }) => sight));
  const { both, touch, place } = told(input, pair);
  if (seen.has('normal')) {
    return [
      {
        kind: 'alike',
        weight: 'doubt',
        sentence: `${both} look alike. ${touch}`,
        mend: 'Choose colours that lie further apart, or tell buyers that the picture is meant to be quiet there.',
        place,
      },
    ];
  }
  // A copy in symbols has no colours, and one in greys has greys of its own.
  if (seen.has('grey') && input.copy.ink === 'colour') {
    return [
      {
        kind: 'alike-in-print',
        weight: 'note',
        sentence: `${both} come out as the same grey on a printer without colours. ${touch}`,
        mend: 'The symbols tell them apart. Offer the copy in greys or in symbols besides.',
        place,
      },
    ];
  }
  if (!pair.alike.some(({ sight }) => sight !== 'grey')) return [];
  return [
    {
      kind: 'alike-with-deficiency',
      weight: 'note',
      sentence: `${both} look alike to some eyes. ${touch}`,
      mend: 'The symbols tell them apart. One of the two a little lighter or darker helps.',
      place,
    },
  ];
}

/** There are fewer greys that a printer keeps apart than a picture may have yarns. */
function sameGreys(input: Input): Finding[] {
  return sharedGreys(input.design.yarns, touchingPairs(input.chart)).map((pair): Finding => {
    const { both, touch, place } = told(input, pair);
    return {
      kind: 'same-grey',
      weight: 'note',
      sentence: `${both} are printed in the same grey in this copy. ${touch}`,
      mend: 'The symbols tell them apart. With fewer yarns, each can have a grey of its own.',
      place,
    };
  });
}

/** What a finding says of two yarns that touch, and where they do first. */
function told({ design, chart }: Pick<Input, 'design' | 'chart'>, { a, b, count }: TouchingPair) {
  const cell = placesOf(chart, a, b).indexOf(1);
  const place: Place = {
    on: 'cell',
    row: Math.floor(cell / chart.columns) + 1,
    cord: (cell % chart.columns) + 1,
  };
  const named = [a, b].map((code) => nameOf(design.yarns, code));
  // Long names that begin alike look alike when they are cut short: their symbols tell which is which.
  const both =
    named[0]!.name === named[1]!.name ? named.map(({ full }) => full) : named.map(({ name }) => name);
  return { both: both.join(' and '), touch: `They touch in ${counted(count, 'place')}.`, place };
}

function nameOf(yarns: readonly Yarn[], code: number): { readonly name: string; readonly full: string } {
  const yarn = yarns.find(({ id }) => codeOf(id) === code);
  if (!yarn) throw new Error(`the chart has cells of code ${code}, and no such yarn`);
  const name = inQuotes(yarn.name);
  return { name, full: `${name} (symbol ${yarn.symbol})` };
}
