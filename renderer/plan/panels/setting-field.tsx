/**
 * One setting: a figure with its unit, two buttons to change it by a step, and a sentence of what it means. What is
 * written is tried at once; it becomes a step of the history when the field is left or Enter is pressed. Escape goes
 * back.
 */
import { useId, useRef, useState } from 'react';
import { numberFault, writtenNumber } from '../../shell/written-number.ts';

interface SettingFieldProps {
  readonly label: string;
  readonly unit: string;
  readonly explained: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  /** What one press of a button adds. */
  readonly press: number;
  /** Null: what was tried is dropped. */
  readonly onTry: (value: number | null) => void;
  readonly onKeep: (value: number) => void;
}

export function SettingField(props: SettingFieldProps) {
  const { label, unit, explained, value, min, max, whole, press, onTry, onKeep } = props;
  const id = useId();
  /** What is being written; null where the field shows its value. */
  const [text, setText] = useState<string | null>(null);
  /** Escape leaves the field too: what is left then is not kept. */
  const isDropped = useRef(false);
  const fault = text === null ? '' : numberFault(text, { min, max, whole });
  const within = (number: number) => Math.min(max, Math.max(min, Math.round(number * 1000) / 1000));
  const keep = () => {
    if (text === null) return;
    if (fault === '' && !isDropped.current) onKeep(writtenNumber(text));
    else onTry(null);
    isDropped.current = false;
    setText(null);
  };
  return (
    <div className="setting">
      <label htmlFor={id}>{label}</label>
      <div className="setting-figure">
        <button
          type="button"
          aria-label={`${label}: less`}
          aria-disabled={value <= min}
          onClick={() => value > min && onKeep(within(value - press))}
        >
          −
        </button>
        <input
          id={id}
          inputMode="decimal"
          value={text ?? String(value)}
          aria-invalid={fault !== ''}
          aria-describedby={`${id}-unit ${id}-hint`}
          onChange={({ target }) => {
            setText(target.value);
            onTry(numberFault(target.value, { min, max, whole }) === '' ? writtenNumber(target.value) : null);
          }}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
            if (event.key !== 'Escape' || text === null) return;
            onTry(null);
            setText(null);
          }}
        />
        <span id={`${id}-unit`} className="unit">
          {unit}
        </span>
        <button
          type="button"
          aria-label={`${label}: more`}
          aria-disabled={value >= max}
          onClick={() => value < max && onKeep(within(value + press))}
        >
          +
        </button>
      </div>
      <p id={`${id}-hint`} className={fault ? 'fault' : 'hint'}>
        {fault || explained}
      </p>
    </div>
  );
}
