/** A small field for a whole number, in a line of other things: what can't be used is put right when it is left. */
import { useState } from 'react';

interface FigureFieldProps {
  readonly label: string;
  /** Said after the figure. */
  readonly unit?: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly onChange: (value: number) => void;
}

export function FigureField({ label, unit = '', value, min, max, onChange }: FigureFieldProps) {
  /** What is being written; null where the field shows its value. */
  const [text, setText] = useState<string | null>(null);
  return (
    <label className="option-figure">
      {label}
      <input
        type="number"
        aria-label={`${label} ${unit}`.trim()}
        min={min}
        max={max}
        value={text ?? value}
        onChange={(event) => {
          setText(event.target.value);
          const number = event.target.valueAsNumber;
          if (Number.isInteger(number) && number >= min && number <= max) onChange(number);
        }}
        onBlur={() => {
          const number = Number(text);
          if (text !== null && text.trim() !== '' && Number.isFinite(number))
            onChange(Math.min(max, Math.max(min, Math.round(number))));
          setText(null);
        }}
      />
      {unit}
    </label>
  );
}
