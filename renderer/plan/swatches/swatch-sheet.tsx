/** What was measured on one swatch, with what comes of it while it is written. */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatUncertain } from '../../../shared/units/uncertain.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import {
  lengthIn,
  lengthUnit,
  mmFrom,
  mmFromThickness,
  thicknessIn,
  thicknessUnit,
} from '../../new-design/length-field.ts';
import { OptionalNumberField, TextField } from '../../shell/fields.tsx';
import { studio } from '../../store/studio.ts';
import { plans, shownPlan, usePlans } from '../plans/plans.ts';
import { GaugeTable } from './gauge-table.tsx';
import { doubt, swatchFrom, type WrittenSwatch } from './measured-swatch.ts';

interface SwatchSheetProps {
  readonly title: string;
  readonly before: WrittenSwatch;
  /** Its place among the design's swatches, from 0; the number of swatches where it is new. */
  readonly index: number;
  readonly answer: (swatch: Swatch) => void;
}

export function SwatchSheet({ title, before, index, answer }: SwatchSheetProps) {
  const design = studio.getState().open!.design;
  const [written, setWritten] = useState(before);
  const made = swatchFrom(written, design);
  const want = (change: WrittenSwatch) => {
    const next = { ...written, ...change };
    setWritten(next);
    const tried = swatchFrom(next, design);
    const swatches = tried.ok ? design.swatches.toSpliced(index, 1, tried.value) : design.swatches;
    plans.setState({ draft: { swatches } });
  };
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (made.ok) answer(made.value);
      }}
    >
      <h2>{title}</h2>
      <SwatchFields written={written} want={want} design={design} />
      <div role="status" className="swatch-outcome">
        {made.ok ? (
          <Outcome swatch={made.value} index={index} design={design} />
        ) : (
          <p className="quiet">{made.problem.sentence}</p>
        )}
      </div>
      <div className="answers">
        <button type="submit" className="main" disabled={!made.ok}>
          Done
        </button>
      </div>
    </form>
  );
}

interface SwatchFieldsProps {
  readonly written: WrittenSwatch;
  readonly want: (change: WrittenSwatch) => void;
  readonly design: Design;
}

function SwatchFields({ written, want, design }: SwatchFieldsProps) {
  const { units } = studio.getState().settings;
  const unit = lengthUnit(units);
  const ground = design.yarns.find(({ id }) => id === design.ground);
  const length = (label: string, key: LengthKey, first = false, hint = '') => (
    <OptionalNumberField
      label={`${label} in ${unit}`}
      value={written[key] === undefined ? undefined : lengthIn(written[key], units)}
      min={0.001}
      max={lengthIn(100_000, units)}
      first={first}
      hint={hint}
      onChange={(value) => want({ [key]: value === undefined ? undefined : mmFrom(value, units) })}
    />
  );
  const count = (label: string, key: 'cords' | 'rows' | 'knots', max: number) => (
    <OptionalNumberField
      label={label}
      value={written[key]}
      min={1}
      max={max}
      whole
      onChange={(value) => want({ [key]: value })}
    />
  );
  const thicknessWritten = (mm: number | undefined) =>
    mm === undefined ? undefined : thicknessIn(mm, units);
  const thickness = (label: string, key: 'cordDiameterMm' | 'yarnDiameterMm', own: number | undefined) => (
    <OptionalNumberField
      label={`${label} in ${thicknessUnit(units)}`}
      value={thicknessWritten(written[key] ?? own)}
      min={thicknessIn(0.1, units)}
      max={thicknessIn(100, units)}
      onChange={(value) => want({ [key]: value === undefined ? undefined : mmFromThickness(value, units) })}
    />
  );
  return (
    <div className="fields quarters">
      {length('Width', 'widthMm', true)}
      {count('over cords', 'cords', limits.columns)}
      {length('Height', 'heightMm')}
      {count('over rows', 'rows', limits.rows)}
      {length('Yarn', 'yarnMm', false, 'without its tails')}
      {count('over knots', 'knots', 1_000_000)}
      {length('Cord before tying', 'cordBeforeMm', false, 'between two marks')}
      {length('after tying', 'cordAfterMm')}
      {thickness('Tied on cord,', 'cordDiameterMm', design.cord.diameterMm)}
      {thickness('with yarn,', 'yarnDiameterMm', ground?.diameterMm)}
      <label className="field">
        Measured on
        <input
          type="date"
          value={written.date ?? ''}
          onChange={({ target }) => want({ date: target.value || undefined })}
        />
      </label>
      <TextField
        label="Name, if you like"
        value={written.name ?? ''}
        max={limits.nameChars}
        onChange={(name) => want({ name: name || undefined })}
      />
    </div>
  );
}

type LengthKey = 'widthMm' | 'heightMm' | 'yarnMm' | 'cordBeforeMm' | 'cordAfterMm';

interface OutcomeProps {
  readonly swatch: Swatch;
  readonly index: number;
  readonly design: Design;
}

/** The gauge and the hanging with this swatch among the others. */
function Outcome({ swatch, index, design }: OutcomeProps) {
  const planned = usePlans(shownPlan);
  const settled = usePlans((state) => state.settled);
  const { units } = studio.getState().settings;
  const doubts = doubt(swatch, design);
  return (
    <div>
      {doubts && <p className="fault">{doubts}</p>}
      <GaugeTable design={{ ...design, swatches: design.swatches.toSpliced(index, 1, swatch) }} />
      <p>{planned && settled ? comesOutWords(planned.materials, units) : 'Planning the hanging with it…'}</p>
    </div>
  );
}

function comesOutWords({ finished, totals }: Materials, units: Units): string {
  const length = (mm: number) => formatLength(mm, units);
  const yarn = (mm: number) => formatYarnLength(mm, units, { enough: true });
  const width = formatUncertain(finished.uncertain.widthMm, length);
  const height = formatUncertain(finished.uncertain.knottedHeightMm, length);
  return `The hanging comes out ${width} wide and ${height} high, and uses ${formatUncertain(totals.uncertain.yarnUsedMm, yarn)} of yarn.`;
}
