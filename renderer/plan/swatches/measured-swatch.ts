/** A swatch while it is being written: figures may still be missing. */
import type { Design } from '../../../shared/design/design.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { good, problem, type Result } from '../../../shared/result.ts';

export type WrittenSwatch = { readonly [K in keyof Swatch]?: Swatch[K] | undefined };

/** What a measured pitch or row height may be of that which cord and yarn suggest, either way. */
const mostTimes = 2;

/**
 * The swatch as the design keeps it; it remembers what it was tied with, so that it still tells the truth where the
 * hanging is changed to another cord. Problem: `not-measured`, saying what is missing or can't be.
 */
export function swatchFrom(written: WrittenSwatch, design: Design): Result<Swatch> {
  const { widthMm, cords, heightMm, rows } = written;
  if (!widthMm || !cords) return missing('Measure its width, and count the cords that you measured over.');
  if (!heightMm || !rows) return missing('Measure its height, and count the rows that you measured over.');
  for (const [first, second, sentence] of pairs) {
    if ((written[first] === undefined) !== (written[second] === undefined)) return missing(sentence);
  }
  const { cordBeforeMm = 0, cordAfterMm = 0 } = written;
  if (cordAfterMm > cordBeforeMm)
    return missing(
      'A cord never comes out longer than it was before tying. Measure between the marks again.',
    );
  const ground = design.yarns.find(({ id }) => id === design.ground);
  const tiedWith = {
    cordDiameterMm: written.cordDiameterMm ?? design.cord.diameterMm,
    yarnDiameterMm: written.yarnDiameterMm ?? ground?.diameterMm,
  };
  const told = Object.entries({ ...written, ...tiedWith }).filter(
    ([, value]) => value !== undefined && value !== '',
  );
  return good(Object.fromEntries(told) as unknown as Swatch);
}

/** A sentence where a swatch is so far from what cord and yarn suggest that a unit may be wrong; else empty. */
export function doubt(swatch: Swatch, design: Design): string {
  const own = gaugeOf({ ...design, swatches: [swatch] });
  const model = gaugeOf({ ...design, swatches: [] });
  const ratios = [own.pitchMm / model.pitchMm, own.rowHeightMm / model.rowHeightMm];
  const isFar = ratios.some((ratio) => ratio > mostTimes || ratio < 1 / mostTimes);
  return isFar
    ? 'That is far from what cord and yarn suggest. Look at the units and the counts once more.'
    : '';
}

const pairs = [
  ['yarnMm', 'knots', 'Yarn and knots belong together: write both, or neither.'],
  ['cordBeforeMm', 'cordAfterMm', 'The cord before and after tying belong together: write both, or neither.'],
] as const satisfies readonly (readonly [keyof Swatch, keyof Swatch, string])[];

function missing(sentence: string): ReturnType<typeof problem> {
  return problem('not-measured', sentence);
}
