/** What is awkward to tie, does not hold, or shows where it should not. */
import { BARE } from '../../design/codes.ts';
import { pinFaults } from '../../tying/pins/pin-faults.ts';
import { counted } from '../../units/counted.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding, Place } from './finding.ts';

export function aboutKnots({ design, chart, materials, plan }: PatternInput): Finding[] {
  return [
    ...nothingToTie(chart),
    ...knotsThatSlide(chart),
    ...carriesBehindBare(chart, plan),
    ...gauge(materials),
    ...pins(design, chart),
  ];
}

function nothingToTie({ cells }: PatternInput['chart']): Finding[] {
  if (!cells.every((code) => code === BARE)) return [];
  return [
    {
      kind: 'nothing-to-tie',
      weight: 'fault',
      sentence: 'The chart is all bare: there is nothing to tie.',
      mend: 'Draw the picture first.',
      place: { on: 'cell', row: 1, cord: 1 },
    },
  ];
}

/** Nothing holds a knot up but the one below it: over a bare cell it may slide down its cord. */
function knotsThatSlide({ cells, columns, rows }: PatternInput['chart']): Finding[] {
  let count = 0;
  let first = -1;
  for (let cell = 0; cell < columns * (rows - 1); cell++) {
    if (cells[cell] === BARE || cells[cell + columns] !== BARE) continue;
    count++;
    if (first < 0) first = cell;
  }
  if (count === 0) return [];
  return [
    {
      kind: 'knots-may-slide',
      weight: 'doubt',
      sentence: `${counted(count, 'knot')} may slide down: the cell below is bare.`,
      mend: 'Tie a row of ground below, or tell the maker to draw these knots very tight.',
      place: { on: 'cell', row: Math.floor(first / columns) + 1, cord: (first % columns) + 1 },
    },
  ];
}

/**
 * No strand is carried across behind bare cells of the row that it arrives in. On its way down it may still hang behind bare cells
 * of rows between, each behind its own cord.
 */
function carriesBehindBare(
  { cells, columns }: PatternInput['chart'],
  { strands }: PatternInput['plan'],
): Finding[] {
  let count = 0;
  let first: Place | null = null;
  for (const { pieces } of strands) {
    for (const { stretches } of pieces) {
      for (const [i, after] of stretches.slice(1).entries()) {
        const { row, to: cord } = stretches[i]!;
        for (let between = row + 1; between < after.row; between++) {
          if (cells[(between - 1) * columns + cord - 1] !== BARE) continue;
          count++;
          first ??= { on: 'cell', row: between, cord };
          break;
        }
      }
    }
  }
  if (!first) return [];
  return [
    {
      kind: 'carry-behind-bare',
      weight: 'note',
      sentence: `${counted(count, 'carry hangs', 'carries hang')} down behind bare cells, where only the cord hides the yarn.`,
      mend: 'Carry over fewer rows, or pin that nothing is carried there, on the Plan screen.',
      place: first,
    },
  ];
}

function gauge({ gauge: { basis } }: PatternInput['materials']): Finding[] {
  const place = { on: 'setting', setting: 'gauge' } as const;
  if (basis.size.from === 'estimate') {
    return [
      {
        kind: 'gauge-not-measured',
        weight: 'doubt',
        sentence: 'The gauge is an estimate: size, yarn and cord may be off by a tenth and more.',
        mend: 'Tie a swatch and measure it, on the Plan screen under Swatches.',
        place,
      },
    ];
  }
  if (basis.size.from === 'told') {
    return [
      {
        kind: 'gauge-not-measured',
        weight: 'doubt',
        sentence:
          'The gauge is as you wrote it, not measured: size, yarn and cord may be off by some percent.',
        mend: 'Tie a swatch and measure it, on the Plan screen under Swatches, and remove the gauge that is told.',
        place,
      },
    ];
  }
  const other = [basis.size, basis.yarn].some(({ from }) => from !== 'swatches');
  if (!other) return [];
  return [
    {
      kind: 'swatch-of-another-thickness',
      weight: 'note',
      sentence: 'Not every figure is measured with this cord and yarn.',
      mend: 'Tie a swatch with the cord and yarn of the hanging, and measure its yarn too.',
      place,
    },
  ];
}

function pins(design: PatternInput['design'], chart: PatternInput['chart']): Finding[] {
  return pinFaults(design, chart).map(({ sentence }) => ({
    kind: 'pin-not-obeyed',
    weight: 'note',
    sentence: `A pin is not obeyed. ${sentence}`,
    mend: 'Take it back or change it, on the Plan screen under Pins.',
    place: { on: 'setting', setting: 'pins' },
  }));
}
