/**
 * One setting: a figure with its unit, two buttons to change it by a step, and a sentence of what it means. What is
 * written is tried at once; it becomes a step of the history when the field is left or Enter is pressed. Escape goes
 * back. Where it may be left empty, that has a meaning too.
 */
import { useId, useRef, useState } from 'react';
import { numberFault, writtenNumber } from '../../shell/written-number.ts';

interface SettingFieldProps {
  readonly label: string;
  readonly unit: string;
  readonly explained: string;
  /** Null: empty. */
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  /** What one press of a button adds. */
  readonly press: number;
  /** Where it may be left empty: what that means, in a word, and the first figure that a button gives. */
  readonly empty?: { readonly means: string; readonly first: number } | undefined;
  /** Null: what was tried is dropped. Its figure is null where the field was emptied. */
  readonly onTry: (written: { readonly figure: number | null } | null) => void;
  readonly onKeep: (figure: number | null) => void;
}

export function SettingField(props: SettingFieldProps) {
  const { label, unit, explained, value, min, max, whole, press, empty, onTry, onKeep } = props;
  const id = useId();
  /** What is being written; null where the field shows its value. */
  const [text, setText] = useState<string | null>(null);
  /** Escape leaves the field too: what is left then is not kept. */
  const isDropped = useRef(false);
  const isEmpty = (written: string) => empty !== undefined && written.trim() === '';
  const faultIn = (written: string) => (isEmpty(written) ? '' : numberFault(written, { min, max, whole }));
  const figureOf = (written: string) => (isEmpty(written) ? null : writtenNumber(written));
  const fault = text === null ? '' : faultIn(text);
  const within = (number: number) => Math.min(max, Math.max(min, Math.round(number * 1000) / 1000));
  const pressed = (by: number) => within(value === null ? (empty?.first ?? min) : value + by);
  const canPress = (by: number) => value === null || pressed(by) !== value;
  const keep = () => {
    if (text === null) return;
    if (fault === '' && !isDropped.current) onKeep(figureOf(text));
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
          aria-disabled={!canPress(-press)}
          onClick={() => canPress(-press) && onKeep(pressed(-press))}
        >
          −
        </button>
        <input
          id={id}
          inputMode="decimal"
          value={text ?? (value === null ? '' : String(value))}
          placeholder={empty?.means}
          aria-invalid={fault !== ''}
          aria-describedby={`${id}-unit ${id}-hint`}
          onChange={({ target }) => {
            setText(target.value);
            onTry(faultIn(target.value) === '' ? { figure: figureOf(target.value) } : null);
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
          aria-disabled={!canPress(press)}
          onClick={() => canPress(press) && onKeep(pressed(press))}
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
