/** A size in the units asked for, each on a line: '30 × 34.6 cm', '11 3/4 × 13 5/8 in'. One unit is enough for both measures. */
import type { Language } from '../../design/pattern-schema.ts';
import type { Units } from '../../units/units.ts';
import { figuresIn } from './figures.ts';

export function sizeIn(units: Units, language: Language, widthMm: number, heightMm: number): string[] {
  return (units === 'both' ? (['metric', 'us'] as const) : [units]).map((each) => {
    const { length } = figuresIn(each, language);
    const [width, height] = [length(widthMm), length(heightMm)];
    const unit = / [^ ]+$/.exec(height)?.[0] ?? '';
    return `${width.endsWith(unit) ? width.slice(0, width.length - unit.length) : width} × ${height}`;
  });
}
