/** Swatches in words. */
import type { Swatch } from '../../../shared/design/schema.ts';
import type { SwatchDifference } from '../../../shared/gauge/swatch-differences.ts';
import { counted } from '../../../shared/units/counted.ts';
import { mmPerInch } from '../../../shared/units/length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { decimal } from '../../../shared/units/round.ts';
import { inUnits, type Units } from '../../../shared/units/units.ts';
import { gaugeOver } from '../leaves/gauge-over.ts';

/** 'Swatch 2', or the name that it was given. `index` counts from 0. */
export function swatchName({ name }: Pick<Swatch, 'name'>, index: number): string {
  return name?.trim() || `Swatch ${index + 1}`;
}

/** '10 cm over 20 cords, 9.6 cm over 20 rows; 190 cm of yarn over 60 knots; a cord of 8 cm came out as 7.8 cm'. */
export function measuredWords(swatch: Swatch, units: Units): string {
  const show = (mm: number) => asMeasured(mm, units);
  const { widthMm, cords, heightMm, rows, yarnMm, knots, cordBeforeMm, cordAfterMm } = swatch;
  return [
    `${show(widthMm)} over ${counted(cords, 'cord')}, ${show(heightMm)} over ${counted(rows, 'row')}`,
    ...(yarnMm !== undefined && knots !== undefined
      ? [`${show(yarnMm)} of yarn over ${counted(knots, 'knot')}`]
      : []),
    ...(cordBeforeMm !== undefined && cordAfterMm !== undefined
      ? [`a cord of ${show(cordBeforeMm)} came out as ${show(cordAfterMm)}`]
      : []),
  ].join('; ');
}

/** '20 cords across and 21.5 rows down per 10 cm'. */
export function perWords({ widthMm, cords, heightMm, rows }: Swatch, units: Units): string {
  const per = (each: Units) => {
    const { mm, words } = gaugeOver(each);
    const count = (counted: number, overMm: number) => decimal((counted * mm) / overMm, 0.1);
    return `${count(cords, widthMm)} cords across and ${count(rows, heightMm)} rows down per ${words}`;
  };
  return inUnits(
    units,
    () => per('metric'),
    () => per('us'),
  );
}

/** Finer than a tape reads: what was measured is told as it was written, so that two swatches are told apart. */
function asMeasured(mm: number, units: Units): string {
  return inUnits(
    units,
    () => `${decimal(mm / 10, 0.01)} cm`,
    () => `${decimal(mm / mmPerInch, 0.01)} in`,
  );
}

/** Below this, two swatches of one hand can't be told apart by a tape. */
const alike = 0.005;
/** Four times what swatches of one hand differ by (a value from memory: 1.5 %): a slip is likelier than the hand. */
const suspicious = 0.06;

/** 'It is 4 % tighter across than the others, and takes 2 % more yarn.' Empty where there are no others. */
export function differenceWords(difference: SwatchDifference | null): string {
  if (!difference) return '';
  const { acrossShare, downShare, yarnShare } = difference;
  const size = [
    ...(Math.abs(acrossShare) < alike ? [] : [`${tension(acrossShare)} across`]),
    ...(Math.abs(downShare) < alike ? [] : [`${tension(downShare)} down`]),
  ];
  const yarn =
    yarnShare === null || Math.abs(yarnShare) < alike
      ? []
      : [`takes ${formatPercent(Math.abs(yarnShare))} ${yarnShare < 0 ? 'less' : 'more'} yarn`];
  if (size.length + yarn.length === 0) return 'It agrees with the others.';
  const parts = [...(size.length > 0 ? [`is ${size.join(' and ')}`] : []), ...yarn];
  const most = Math.max(Math.abs(acrossShare), Math.abs(downShare), Math.abs(yarnShare ?? 0));
  const advice = most > suspicious ? ' Measure it again: a slip is likelier than your hand.' : '';
  return `It ${parts.join(' and ')} than the others.${advice}`;
}

function tension(share: number): string {
  return `${formatPercent(Math.abs(share))} ${share < 0 ? 'tighter' : 'looser'}`;
}
