/** A figure that is kept as one step of the history. Empty means 'not told' where `mayBeEmpty` says so. */
import { type ReactNode, useId } from 'react';
import { numberFault, shownNumber, writtenNumber } from '../../shell/written-number.ts';
import { useWrittenFigure } from './use-written-figure.ts';

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
  const isLeftEmpty = (written: string) => mayBeEmpty && written.trim() === '';
  const { fault, input } = useWrittenFigure({
    shown: value === undefined ? '' : shownNumber(value),
    faultIn: (written) => (isLeftEmpty(written) ? '' : numberFault(written, { min, max })),
    onKeep: (written) => onKeep(isLeftEmpty(written) ? undefined : writtenNumber(written)),
  });
  return (
    <div className="figure-field">
      <label htmlFor={id} className={isLabelUnseen ? 'unseen' : ''}>
        {label}
      </label>
      <span className="figure-entry">
        <input id={id} placeholder={placeholder} aria-describedby={`${id}-unit ${id}-hint`} {...input} />
        <span id={`${id}-unit`} className="unit">
          {unit}
        </span>
      </span>
      <span id={`${id}-hint`} className={fault ? 'fault' : 'hint'} aria-live="polite">
        {fault || hint}
      </span>
    </div>
  );
}
