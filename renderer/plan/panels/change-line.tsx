/** What it takes in a line beside the settings, and by how much the last change of one made it differ. */
import { counted } from '../../../shared/units/counted.ts';
import { grouped } from '../../../shared/units/grouped.ts';
import { signed } from '../../../shared/units/signed.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength, yarnLengthDifference } from '../../../shared/units/yarn-length.ts';
import { useStudio } from '../../store/use-studio.ts';
import { comparedWithLast } from '../plans/compared-with-last.ts';
import type { Figures } from '../plans/figures.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';

const enough = { enough: true };

export function ChangeLine() {
  const shown = usePlans(shownPlan);
  const quick = usePlans((state) => state.quick);
  const full = usePlans((state) => state.full);
  const last = usePlans((state) => state.last);
  const units = useStudio((state) => state.settings.units);
  if (!shown || shown.figures.pieces === 0) return null;
  const pair = comparedWithLast({ quick, full, last });
  return (
    <div className="change-line" role="status" aria-label="What it takes">
      <p>{takesWords(shown.figures, units)}</p>
      {pair && <p className="quiet small">{changeWords(pair.last, pair.now, units)}</p>}
    </div>
  );
}

/** '128 pieces, 196 m of yarn, 5 hanging'. */
function takesWords({ pieces, yarnCutMm, liveMax }: Figures, units: Units): string {
  const yarn = formatYarnLength(yarnCutMm, units, enough);
  return `${counted(pieces, 'piece')}, ${yarn} of yarn, ${liveMax} hanging`;
}

/** 'By the last change −3 pieces, −4 m of yarn, as many hanging'. */
function changeWords(before: Figures, now: Figures, units: Units): string {
  const count = (from: number, to: number, what: string) =>
    from === to ? `as many ${what}` : `${signed(to - from, (value) => grouped(String(value)))} ${what}`;
  const yarn = yarnLengthDifference(before.yarnCutMm, now.yarnCutMm, units, enough);
  return `By the last change ${count(before.pieces, now.pieces, 'pieces')}, ${yarn === 'same' ? 'as much yarn' : `${yarn} of yarn`}, ${count(before.liveMax, now.liveMax, 'hanging')}.`;
}
