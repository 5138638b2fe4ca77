/** A new design: by cords and rows, or by the size it shall have when finished. */
import { useState } from 'react';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { cordsForWidth, gaugeOf, rowsForHeight, sizeOf } from '../../shared/gauge/gauge.ts';
import { gaugeFromPer10Cm } from '../../shared/gauge/gauge-from-per-10-cm.ts';
import { counted } from '../../shared/units/counted.ts';
import { formatLength } from '../../shared/units/length.ts';
import { mayLeave } from '../flows/opening.ts';
import { ask } from '../shell/dialogs.tsx';
import { Choices, NumberField, TextField } from '../shell/fields.tsx';
import { openDesign, studio } from '../store/studio.ts';
import { GaugeField } from './gauge-field.tsx';
import { lengthIn, lengthUnit, mmFrom } from './length-field.ts';
import { ThicknessField } from './thickness-field.tsx';

export async function startNewDesign(): Promise<void> {
  if (!(await mayLeave())) return;
  const design = await ask<Design>({
    label: 'New design',
    body: (answer) => <NewDesignSheet answer={answer} />,
  });
  if (design) openDesign(design, null);
}

interface Wishes {
  title: string;
  by: 'cords' | 'size';
  columns: number;
  rows: number;
  widthMm: number;
  heightMm: number;
  gauge: 'estimate' | 'measured';
  cordMm: number;
  yarnMm: number;
  knotsPer10Cm: number;
  rowsPer10Cm: number;
}

const firstWishes: Wishes = {
  title: 'New design',
  by: 'cords',
  columns: 40,
  rows: 48,
  widthMm: 240,
  heightMm: 300,
  gauge: 'estimate',
  cordMm: 3,
  yarnMm: 2,
  knotsPer10Cm: 20,
  rowsPer10Cm: 20.8,
};

function NewDesignSheet({ answer }: { answer: (design: Design) => void }) {
  const { units, designer, startCorner } = studio.getState().settings;
  const [wishes, setWishes] = useState(firstWishes);
  const wish = (change: Partial<Wishes>) => setWishes((before) => ({ ...before, ...change }));
  const made = designOf(wishes, designer, startCorner);
  const unit = lengthUnit(units);

  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (typeof made !== 'string') answer(made);
      }}
    >
      <h2>New design</h2>
      <div className="fields">
        <TextField
          label="Title"
          value={wishes.title}
          onChange={(title) => wish({ title })}
          max={limits.nameChars}
          first
        />
        <Choices
          label="Begin with"
          value={wishes.by}
          options={[
            { value: 'cords', label: 'cords and rows' },
            { value: 'size', label: 'the finished size' },
          ]}
          onChange={(by) => wish({ by })}
        />
        {wishes.by === 'cords' ? (
          <>
            <NumberField
              label="Cords"
              hint="two for each cut cord"
              value={wishes.columns}
              min={1}
              max={limits.columns}
              whole
              onChange={(columns) => wish({ columns })}
            />
            <NumberField
              label="Rows"
              value={wishes.rows}
              min={1}
              max={limits.rows}
              whole
              onChange={(rows) => wish({ rows })}
            />
          </>
        ) : (
          <>
            <NumberField
              label={`Width in ${unit}`}
              value={lengthIn(wishes.widthMm, units)}
              min={0.5}
              max={400}
              onChange={(width) => wish({ widthMm: mmFrom(width, units) })}
            />
            <NumberField
              label={`Knotted height in ${unit}`}
              hint="without the fringe"
              value={lengthIn(wishes.heightMm, units)}
              min={0.5}
              max={800}
              onChange={(height) => wish({ heightMm: mmFrom(height, units) })}
            />
          </>
        )}
        <Choices
          label="Gauge"
          value={wishes.gauge}
          options={[
            { value: 'estimate', label: 'estimate it from cord and yarn' },
            { value: 'measured', label: 'I measured a swatch' },
          ]}
          onChange={(gauge) => wish({ gauge })}
        />
        <ThicknessField
          label="Cord thickness"
          mm={wishes.cordMm}
          minMm={0.5}
          maxMm={30}
          onChange={(cordMm) => wish({ cordMm })}
        />
        <ThicknessField
          label="Yarn thickness"
          mm={wishes.yarnMm}
          minMm={0.2}
          maxMm={20}
          onChange={(yarnMm) => wish({ yarnMm })}
        />
        {wishes.gauge === 'measured' && (
          <>
            <GaugeField
              of="knots"
              per10Cm={wishes.knotsPer10Cm}
              onChange={(knotsPer10Cm) => wish({ knotsPer10Cm })}
            />
            <GaugeField
              of="rows"
              per10Cm={wishes.rowsPer10Cm}
              onChange={(rowsPer10Cm) => wish({ rowsPer10Cm })}
            />
          </>
        )}
      </div>
      <p role="status" className={typeof made === 'string' ? 'fault' : ''}>
        {typeof made === 'string' ? made : summary(made, units)}
      </p>
      <div className="answers">
        <button type="submit" className="main" disabled={typeof made === 'string'}>
          Start drawing
        </button>
      </div>
    </form>
  );
}

/** The design that is wished for, or a sentence that says why it can't be made. */
function designOf(wishes: Wishes, designer: string, startCorner: Design['startCorner']): Design | string {
  if (!wishes.title.trim()) return 'Give the design a title.';
  const title = wishes.title.trim();
  const sample = fitted(newDesign({ title, columns: 1, rows: 1, designer, startCorner }), wishes);
  const gauge = gaugeOf(sample);
  const columns = wishes.by === 'cords' ? wishes.columns : cordsForWidth(wishes.widthMm, gauge);
  const rows = wishes.by === 'cords' ? wishes.rows : rowsForHeight(wishes.heightMm, gauge);
  if (columns > limits.columns)
    return `That is ${columns} cords; ${limits.columns} are the most. Make it narrower.`;
  if (rows > limits.rows) return `That is ${rows} rows; ${limits.rows} are the most. Make it shorter.`;
  return fitted(newDesign({ title, columns, rows, designer, startCorner }), wishes);
}

function fitted(design: Design, wishes: Wishes): Design {
  return {
    ...design,
    cord: { ...design.cord, diameterMm: wishes.cordMm },
    yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: wishes.yarnMm })),
    swatches: wishes.gauge === 'measured' ? [gaugeFromPer10Cm(wishes.knotsPer10Cm, wishes.rowsPer10Cm)] : [],
  };
}

function summary(design: Design, units: 'metric' | 'us' | 'both'): string {
  const size = sizeOf(design, gaugeOf(design));
  const about = design.swatches.length === 0 ? 'about ' : '';
  return `${counted(design.columns, 'cord')} and ${counted(design.rows, 'row')}: ${about}${formatLength(size.widthMm, units)} wide, ${formatLength(size.knottedHeightMm, units)} knotted.`;
}
