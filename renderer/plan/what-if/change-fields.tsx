/** The figures of one change. */
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { NumberField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { gaugeOver } from '../leaves/gauge-over.ts';
import type { Change } from './change.ts';

interface ChangeFieldsProps {
  readonly change: Change;
  readonly design: Design;
  readonly onChange: (change: Change) => void;
}

export function ChangeFields({ change, design, onChange }: ChangeFieldsProps) {
  const units = useStudio((state) => state.settings.units);
  switch (change.kind) {
    case 'tidy':
      return <p className="quiet small">Each lone knot takes the yarn that most of its neighbours have.</p>;
    case 'working-length':
      return (
        <NumberField
          label={`Pieces, in ${lengthUnit(units)}`}
          value={lengthIn(change.mm, units)}
          min={lengthIn(1, units)}
          max={lengthIn(100_000, units)}
          onChange={(length) => onChange({ ...change, mm: mmFrom(length, units) })}
        />
      );
    case 'carry':
      return (
        <div className="pair">
          <NumberField
            label="Cords"
            value={change.cords}
            min={0}
            max={limits.columns}
            whole
            onChange={(cords) => onChange({ ...change, cords })}
          />
          <NumberField
            label="Rows"
            value={change.rows}
            min={0}
            max={limits.rows}
            whole
            onChange={(rows) => onChange({ ...change, rows })}
          />
        </div>
      );
    case 'reserve':
      return (
        <NumberField
          label="Kept free of each piece, in %"
          value={change.share * 100}
          min={0}
          max={50}
          onChange={(percent) => onChange({ ...change, share: Math.round(percent * 10) / 1000 })}
        />
      );
    case 'live-wish':
      return (
        <NumberField
          label="Strands, at most"
          value={change.strands}
          min={1}
          max={limits.columns}
          whole
          onChange={(strands) => onChange({ ...change, strands })}
        />
      );
    case 'merge':
      return (
        <div className="pair">
          <YarnChoice
            label="Yarn"
            value={change.from}
            design={design}
            onChange={(from) => onChange({ ...change, from })}
          />
          <YarnChoice
            label="into"
            value={change.into}
            design={design}
            onChange={(into) => onChange({ ...change, into })}
          />
        </div>
      );
    case 'gauge':
      return <GaugePair change={change} onChange={onChange} />;
  }
}

type GaugeChange = Extract<Change, { kind: 'gauge' }>;

function GaugePair({ change, onChange }: { change: GaugeChange; onChange: (change: Change) => void }) {
  const { mm, words } = gaugeOver(useStudio((state) => state.settings.units));
  const field = (label: string, key: 'knotsPer10Cm' | 'rowsPer10Cm') => (
    <NumberField
      label={`${label} per ${words}`}
      value={Math.round(change[key] * mm) / 100}
      min={1}
      max={200}
      onChange={(count) => onChange({ ...change, [key]: (count * 100) / mm })}
    />
  );
  return (
    <div className="pair">
      {field('Knots', 'knotsPer10Cm')}
      {field('Rows', 'rowsPer10Cm')}
    </div>
  );
}

interface YarnChoiceProps {
  readonly label: string;
  readonly value: YarnId;
  readonly design: Design;
  readonly onChange: (id: YarnId) => void;
}

function YarnChoice({ label, value, design, onChange }: YarnChoiceProps) {
  return (
    <label className="field">
      {label}
      <select value={value} onChange={({ target }) => onChange(target.value as YarnId)}>
        {design.yarns.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
