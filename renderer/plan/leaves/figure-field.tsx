/**
 * A figure that is kept as one step of the history when its field is left or Enter is pressed; Escape goes back. Empty
 * means 'not told' where `mayBeEmpty` says so.
 */
import { type ReactNode, useId, useRef, useState } from 'react';
import { numberFault, shownNumber, writtenNumber } from '../../shell/written-number.ts';

interface FigureFieldProps {
  readonly label: string;
  /** The label is only heard, as in a table whose heads name it. */
  readonly isLabelUnseen?: boolean;
  readonly unit?: string;
  readonly hint?: ReactNode;
  /** Stands in the empty field. */
  readonly placeholder?: string;
  readonly value: number | undefined;
  readonly mayBeEmpty?: boolean;
  readonly min: number;
  readonly max: number;
  readonly onKeep: (value: number | undefined) => void;
}

export function FigureField(props: FigureFieldProps) {
  const { label, isLabelUnseen = false, unit, hint, placeholder, value, mayBeEmpty = false } = props;
  const { min, max, onKeep } = props;
  const id = useId();
  /** What is being written; null where the field shows its value. */
  const [text, setText] = useState<string | null>(null);
  /** Escape leaves the field too: what is left then is not kept. */
  const isDropped = useRef(false);
  const isEmpty = text !== null && text.trim() === '';
  const fault = text === null || (isEmpty && mayBeEmpty) ? '' : numberFault(text, { min, max });
  const keep = () => {
    const next = isEmpty ? undefined : writtenNumber(text ?? '');
    const shown = value === undefined ? '' : shownNumber(value);
    if (text !== null && fault === '' && !isDropped.current && text.trim() !== shown) onKeep(next);
    isDropped.current = false;
    setText(null);
  };
  return (
    <div className="figure-field">
      <label htmlFor={id} className={isLabelUnseen ? 'unseen' : ''}>
        {label}
      </label>
      <span className="figure-entry">
        <input
          id={id}
          inputMode="decimal"
          placeholder={placeholder}
          value={text ?? (value === undefined ? '' : shownNumber(value))}
          aria-invalid={fault !== ''}
          aria-describedby={`${id}-unit ${id}-hint`}
          onChange={({ target }) => setText(target.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && fault === '') keep();
            if (event.key !== 'Escape' || text === null) return;
            isDropped.current = true;
            event.currentTarget.blur();
          }}
        />
        <span id={`${id}-unit`} className="unit">
          {unit}
        </span>
      </span>
      <span id={`${id}-hint`} className={fault ? 'fault' : 'hint'}>
        {fault || hint}
      </span>
    </div>
  );
}
