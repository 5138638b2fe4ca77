/** What a yarn's label tells, to be written: the fields that yarns of a design and of the stash have in common. */
import { useEffect, useId, useRef, useState } from 'react';
import { limits } from '../../../shared/design/limits.ts';
import type { YarnLook } from '../../../shared/design/yarn-edits.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { ThicknessField } from '../../new-design/thickness-field.tsx';
import { NumberField, OptionalNumberField, TextField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { skeinFault, skeinMetres, skeinUnits, withGrams, withMetres } from './skein.ts';

interface YarnFieldsProps {
  readonly look: YarnLook;
  readonly want: (change: Partial<YarnLook>) => void;
  /** Beside the skeins that are owned. */
  readonly ownedHint: string;
}

export function YarnFields({ look, want, ownedHint }: YarnFieldsProps) {
  const { units, currency: usual } = useStudio((state) => state.settings);
  // A price stands in the design, so it is told in the design's own money.
  const currency = useStudio((state) => state.open?.design.money?.currency) ?? usual;
  const { length, perMetre, mass, perGram } = skeinUnits[units];
  /** How often a colour was picked by eye. */
  const [picked, setPicked] = useState(0);
  const metres = skeinMetres(look);
  const fault = skeinFault(look);
  return (
    <div className="fields">
      <TextField
        label="Name"
        value={look.name}
        max={limits.nameChars}
        first
        onChange={(name) => want({ name })}
      />
      {look.name.trim() === '' && (
        <p className="whole fault" role="status">
          Write a name for the yarn.
        </p>
      )}
      <label className="field">
        Colour
        <input
          type="color"
          value={look.color}
          onChange={(event) => {
            setPicked(picked + 1);
            want({ color: event.target.value.toLowerCase() });
          }}
        />
      </label>
      {/* A colour chosen beside it takes the place of what was being written. */}
      <ColourField key={picked} color={look.color} onChange={(color) => want({ color })} />
      <NumberField
        label={`Skein: ${length}`}
        value={metres * perMetre}
        min={1}
        max={100_000}
        hint={units === 'both' && formatYarnLength(metres * 1000, 'us')}
        onChange={(value) => want(withMetres(look, value / perMetre))}
      />
      <NumberField
        label={`Skein: ${mass}`}
        value={look.skeinG * perGram}
        min={0.1}
        max={100_000}
        hint={units === 'both' && formatMass(look.skeinG, 'us')}
        onChange={(value) => want(withGrams(look, value / perGram))}
      />
      <p className={fault ? 'whole fault' : 'whole quiet small'}>
        {fault || `${formatYarnLength(look.metresPer100G * 1000, units)} in ${formatMass(100, units)}`}
      </p>
      <ThicknessField
        label="Thickness"
        mm={look.diameterMm}
        minMm={0.2}
        maxMm={20}
        onChange={(diameterMm) => want({ diameterMm })}
      />
      <OptionalNumberField
        label="Skeins you own"
        value={look.ownedSkeins}
        min={0}
        max={100_000}
        hint={ownedHint}
        onChange={(ownedSkeins) => want({ ownedSkeins })}
      />
      <OptionalNumberField
        label={currency ? `Price of a skein in ${currency}` : 'Price of a skein'}
        value={look.price}
        min={0}
        max={1_000_000}
        hint="Empty where it doesn’t matter."
        onChange={(price) => want({ price })}
      />
    </div>
  );
}

/** True where these fields can be kept: a name, and a skein that can be. */
export function isWhole(look: YarnLook): boolean {
  return look.name.trim() !== '' && skeinFault(look) === '';
}

const colourFault = 'Write # and six digits from 0 to f.';

/** The colour in figures, for whoever has them; what is no colour yet changes nothing. */
function ColourField({ color, onChange }: { color: string; onChange: (color: string) => void }) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [text, setText] = useState<string | null>(null);
  const isFault = text !== null && !isColour(text);
  // A form can't be sent while this is no colour.
  useEffect(() => input.current?.setCustomValidity(isFault ? colourFault : ''), [isFault]);
  return (
    <div className="field">
      <label htmlFor={id}>Colour as #rrggbb</label>
      <input
        ref={input}
        id={id}
        value={text ?? color}
        aria-invalid={isFault}
        aria-describedby={`${id}-fault`}
        onChange={(event) => {
          setText(event.target.value);
          if (isColour(event.target.value)) onChange(event.target.value.trim().toLowerCase());
        }}
        onBlur={() => !isFault && setText(null)}
      />
      <span id={`${id}-fault`} className="fault">
        {isFault && colourFault}
      </span>
    </div>
  );
}

function isColour(text: string): boolean {
  return /^#[0-9a-f]{6}$/i.test(text.trim());
}
