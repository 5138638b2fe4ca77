/** This hanging: title, gauge, cord, dowel, fringe and how it is tied. All changes of the dialog are one step. */
import { useState } from 'react';
import type { CommandId } from '../../shared/commands.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Edit, Field, SetField } from '../../shared/design/edits.ts';
import { limits } from '../../shared/design/limits.ts';
import { basisSentence } from '../../shared/gauge/basis-sentence.ts';
import { fitSwatches } from '../../shared/gauge/fit-swatches.ts';
import { type Gauge, gaugeOf, knotMm, sizeOf } from '../../shared/gauge/gauge.ts';
import { hasRoomForTold, measuredSwatches, toldGauge, withToldGauge } from '../../shared/gauge/told-gauge.ts';
import { checkTying } from '../../shared/tying/check-tying.ts';
import { formatLength, mmPerYard } from '../../shared/units/length.ts';
import { gPerOunce } from '../../shared/units/mass.ts';
import type { Units } from '../../shared/units/units.ts';
import { GaugeField } from '../new-design/gauge-field.tsx';
import { lengthIn, lengthUnit, mmFrom } from '../new-design/length-field.ts';
import { ThicknessField } from '../new-design/thickness-field.tsx';
import { runCommand } from '../shell/command-bus.ts';
import { ask } from '../shell/dialogs.tsx';
import { Choices, NumberField, TextArea, TextField } from '../shell/fields.tsx';
import { change } from '../store/changing.ts';
import { studio } from '../store/studio.ts';

const fields = [
  'title',
  'designer',
  'notes',
  'startCorner',
  'cord',
  'dowel',
  'fringe',
  'swatches',
  'tying',
  'yarnMargin',
] as const satisfies Field[];

export async function changeHanging(): Promise<void> {
  const design = studio.getState().open?.design;
  if (!design) return;
  const answered = await ask<Answer>({
    label: 'This hanging',
    wide: true,
    body: (answer) => <HangingSheet design={design} answer={answer} />,
  });
  if (!answered) return;
  const { wanted, then } = answered;
  const edits = fields
    .filter((field) => wanted[field] !== design[field])
    .map((field): Edit => ({ kind: 'set', field, value: wanted[field] }) as SetField);
  if (edits.length > 0) change('Change the hanging', { kind: 'together', edits });
  if (then) runCommand(then);
}

interface Answer {
  readonly wanted: Design;
  /** What the person goes on to from here. */
  readonly then: CommandId | null;
}

function HangingSheet({ design, answer }: { design: Design; answer: (answer: Answer) => void }) {
  const { units } = studio.getState().settings;
  const unit = lengthUnit(units);
  const [wanted, setWanted] = useState(design);
  const want = (next: Partial<Design>) => setWanted((before) => ({ ...before, ...next }));
  const length = (label: string, mm: number, max: number, onChange: (mm: number) => void, hint?: string) => (
    <NumberField
      label={`${label} in ${unit}`}
      value={lengthIn(mm, units)}
      min={0}
      max={lengthIn(max, units)}
      hint={hint}
      onChange={(value) => onChange(mmFrom(value, units))}
    />
  );
  const { cord, dowel, fringe, tying } = wanted;
  const gauge = gaugeOf(wanted);
  const fit = fitSwatches(wanted);
  const size = sizeOf(wanted, gauge);
  const longestKnotMm = Math.max(...wanted.yarns.map((yarn) => knotMm(wanted, yarn, gauge)));
  const tyable = checkTying(tying, longestKnotMm, units);
  const isUsable = wanted.title.trim() !== '' && tyable.ok;
  const done = (then: CommandId | null) => {
    if (isUsable) answer({ wanted: { ...wanted, title: wanted.title.trim() }, then });
  };

  return (
    <form
      className="sheet hanging-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        done(null);
      }}
    >
      <h2>This hanging</h2>
      <div className="fields thirds">
        <TextField
          label="Title"
          value={wanted.title}
          max={limits.nameChars}
          first
          onChange={(title) => want({ title })}
        />
        <TextField
          label="Designer"
          value={wanted.designer}
          max={limits.nameChars}
          onChange={(designer) => want({ designer })}
        />
        <Choices
          label="Row 1 starts at the"
          value={wanted.startCorner}
          options={[
            { value: 'top-left', label: 'top left' },
            { value: 'top-right', label: 'top right' },
          ]}
          onChange={(startCorner) => want({ startCorner })}
        />

        <h3 className="whole">Gauge</h3>
        <GaugeFields wanted={wanted} gauge={gauge} want={want} />
        <p className="whole quiet">
          {basisSentence(fit.size)} Swatches are kept and changed under “Swatches…”.
        </p>

        <h3 className="whole">Cord, dowel, fringe</h3>
        <ThicknessField
          label="Cord thickness"
          mm={cord.diameterMm}
          minMm={0.5}
          maxMm={30}
          onChange={(diameterMm) => want({ cord: { ...cord, diameterMm } })}
        />
        <NumberField
          label={`Cord, ${cordMass[units].words}`}
          value={cord.gPerM * cordMass[units].perGPerM}
          min={0.1 * cordMass[units].perGPerM}
          max={1000 * cordMass[units].perGPerM}
          onChange={(written) => want({ cord: { ...cord, gPerM: written / cordMass[units].perGPerM } })}
        />
        <NumberField
          label="Take-up in %"
          value={cord.takeUp * 100}
          min={0}
          max={100}
          hint="how much longer cords must be"
          onChange={(percent) => want({ cord: { ...cord, takeUp: percent / 100 } })}
        />
        <ThicknessField
          label="Dowel thickness"
          mm={dowel.diameterMm}
          minMm={2}
          maxMm={100}
          onChange={(diameterMm) => want({ dowel: { ...dowel, diameterMm } })}
        />
        {length('Dowel beyond each side', dowel.overhangMm, 1000, (overhangMm) =>
          want({ dowel: { ...dowel, overhangMm } }),
        )}
        <label className="field">
          Fringe
          <select
            value={fringe.shape}
            onChange={(event) =>
              want({ fringe: { ...fringe, shape: event.target.value as typeof fringe.shape } })
            }
          >
            <option value="straight">straight</option>
            <option value="v">V</option>
            <option value="inverted-v">inverted V</option>
            <option value="curve">curve</option>
            {fringe.byHandMm && <option value="by-hand">by hand</option>}
          </select>
        </label>
        {fringe.shape !== 'by-hand' &&
          length('Longest fringe', fringe.longMm, 3000, (longMm) =>
            want({ fringe: { ...fringe, longMm, shortMm: Math.min(fringe.shortMm, longMm) } }),
          )}
        {fringe.shape !== 'straight' &&
          fringe.shape !== 'by-hand' &&
          length('Shortest fringe', Math.min(fringe.shortMm, fringe.longMm), fringe.longMm, (shortMm) =>
            want({ fringe: { ...fringe, shortMm } }),
          )}

        <h3 className="whole">Tying</h3>
        {length(
          'Working length',
          tying.workingLengthMm,
          20_000,
          (mm) => want({ tying: { ...tying, workingLengthMm: Math.max(1, mm) } }),
          'how long a piece is cut',
        )}
        {length(
          'Tail',
          tying.tailMm,
          1000,
          (tailMm) => want({ tying: { ...tying, tailMm } }),
          'left at both ends of a piece',
        )}
        <NumberField
          label="Carry at most, cords"
          value={tying.carryMaxCords}
          min={0}
          max={limits.columns}
          whole
          onChange={(carryMaxCords) => want({ tying: { ...tying, carryMaxCords } })}
        />
        <NumberField
          label="Carry at most, rows"
          value={tying.carryMaxRows}
          min={0}
          max={limits.rows}
          whole
          onChange={(carryMaxRows) => want({ tying: { ...tying, carryMaxRows } })}
        />
        <NumberField
          label="Yarn margin in %"
          value={wanted.yarnMargin * 100}
          min={0}
          max={200}
          hint="bought above the need"
          onChange={(percent) => want({ yarnMargin: percent / 100 })}
        />
        <TextArea
          label="Notes"
          value={wanted.notes}
          max={limits.stringChars}
          hint="for yourself: they stay in the design, and are not printed"
          onChange={(notes) => want({ notes })}
        />
      </div>
      <div className="ending">
        {tyable.ok ? (
          <p role="status">
            {gauge.source === 'measured' ? '' : 'About '}
            {formatLength(size.widthMm, units)} wide, {formatLength(size.knottedHeightMm, units)} knotted,{' '}
            {formatLength(size.heightWithFringeMm, units)} with the fringe.
          </p>
        ) : (
          <p role="alert" className="fault">
            {tyable.problem.sentence}
          </p>
        )}
        <div className="answers">
          {onward.map(([command, label]) => (
            <button
              key={command}
              type="button"
              disabled={!isUsable}
              onClick={(event) => event.currentTarget.form?.reportValidity() && done(command)}
            >
              {label}
            </button>
          ))}
          <button type="submit" className="main" disabled={!isUsable}>
            Done
          </button>
        </div>
      </div>
    </form>
  );
}

const onward: readonly (readonly [CommandId, string])[] = [
  ['go-swatches', 'Swatches…'],
  ['resize', 'Cords and rows…'],
];

const ouncesAYard = { words: 'ounces a yard', perGPerM: mmPerYard / 1000 / gPerOunce };
const gramsAMetre = { words: 'grams a metre', perGPerM: 1 };

/** How a cord's mass is written. */
const cordMass: Readonly<Record<Units, typeof gramsAMetre>> = {
  metric: gramsAMetre,
  us: ouncesAYard,
  both: gramsAMetre,
};

interface GaugeFieldsProps {
  readonly wanted: Design;
  readonly gauge: Gauge;
  readonly want: (next: Partial<Design>) => void;
}

/** The gauge as swatches or thickness give it, or as it is written here; the swatches stay either way. */
function GaugeFields({ wanted, gauge, want }: GaugeFieldsProps) {
  const { swatches } = wanted;
  const measured = measuredSwatches(swatches);
  const isTold = toldGauge(swatches) !== null;
  const tell = (knots: number, rows: number) => want({ swatches: withToldGauge(swatches, knots, rows) });
  const knots = 100 / gauge.pitchMm;
  const rows = 100 / gauge.rowHeightMm;
  const counted = measured.length === 1 ? 'the swatch' : `${measured.length} swatches`;
  return (
    <>
      <Choices
        label="Knots and rows"
        value={isTold ? 'told' : 'found'}
        options={[
          {
            value: 'found',
            label: measured.length > 0 ? `from ${counted}` : 'estimated from cord and yarn',
          },
          ...(hasRoomForTold(swatches) ? [{ value: 'told' as const, label: 'as written here' }] : []),
        ]}
        onChange={(kind) => (kind === 'told' ? tell(knots, rows) : want({ swatches: measured }))}
      />
      {isTold && (
        <>
          <GaugeField of="knots" per10Cm={knots} onChange={(value) => tell(value, rows)} />
          <GaugeField of="rows" per10Cm={rows} onChange={(value) => tell(knots, value)} />
        </>
      )}
    </>
  );
}
