/**
 * Labelled fields for dialogs. A figure that can't be used is said so in words; it stays as it was written, changes nothing,
 * and nothing else is lost.
 */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { numberFault, shownNumber, writtenNumber } from './written-number.ts';

interface NumberFieldProps {
  label: string;
  value: number;
  onChange: (value: number) => void;
  min: number;
  max: number;
  whole?: boolean;
  hint?: ReactNode;
  first?: boolean;
}

export function NumberField({ value, onChange, ...rest }: NumberFieldProps) {
  return (
    <FigureField
      {...rest}
      value={value}
      onChange={(number) => number !== undefined && onChange(number)}
      mayBeEmpty={false}
    />
  );
}

function FigureField({
  label,
  value,
  onChange,
  min,
  max,
  whole = false,
  hint,
  first = false,
  mayBeEmpty,
}: OptionalNumberFieldProps & { mayBeEmpty: boolean }) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  /** What is being written, over which value; null where the field shows its value. */
  const [written, setWritten] = useState<{ readonly text: string; readonly over: number | undefined } | null>(
    null,
  );
  const text = written?.text ?? null;
  const faultIn = (figure: string) =>
    mayBeEmpty && figure.trim() === '' ? '' : numberFault(figure, { min, max, whole });
  const fault = text === null ? '' : faultIn(text);
  // A form can't be sent while a figure in it can't be used.
  useEffect(() => input.current?.setCustomValidity(fault), [fault]);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        ref={input}
        id={id}
        inputMode="decimal"
        data-first={first || undefined}
        value={text ?? (value === undefined ? '' : shownNumber(value))}
        aria-invalid={fault !== ''}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          const over = written ? written.over : value;
          setWritten({ text: event.target.value, over });
          const number = writtenNumber(event.target.value);
          if (faultIn(event.target.value) === '') onChange(Number.isNaN(number) ? undefined : number);
          // The beginning of a figure that can't be used was taken for one: 2 of 2000.
          else if (value !== over) onChange(over);
        }}
        onBlur={() => fault === '' && setWritten(null)}
      />
      <span id={`${id}-hint`} className={fault ? 'fault' : 'hint'} aria-live="polite">
        {fault || hint}
      </span>
    </div>
  );
}

interface OptionalNumberFieldProps extends Omit<NumberFieldProps, 'value' | 'onChange'> {
  /** Undefined where it isn't told: the field is empty. */
  value: number | undefined;
  onChange: (value: number | undefined) => void;
}

/** A figure that may be left out. */
export function OptionalNumberField({ value, onChange, ...rest }: OptionalNumberFieldProps) {
  return <FigureField {...rest} value={value} onChange={onChange} mayBeEmpty />;
}

export function TextField(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  max: number;
  first?: boolean;
}) {
  const id = useId();
  return (
    <div className="field whole">
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        data-first={props.first || undefined}
        value={props.value}
        maxLength={props.max}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </div>
  );
}

/** A text of several lines. Enter begins a line, and does not send the form. */
export function TextArea(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  max: number;
  hint: string;
  first?: boolean;
  required?: boolean;
}) {
  const id = useId();
  return (
    <div className="field whole">
      <label htmlFor={id}>{props.label}</label>
      <textarea
        id={id}
        rows={3}
        data-first={props.first || undefined}
        required={props.required}
        value={props.value}
        maxLength={props.max}
        aria-describedby={`${id}-hint`}
        onChange={(event) => props.onChange(event.target.value)}
      />
      <span id={`${id}-hint`} className="hint">
        {props.hint}
      </span>
    </div>
  );
}

interface ChoicesProps<T extends string> {
  label: string;
  value: T;
  options: readonly { value: T; label: string }[];
  onChange: (value: T) => void;
}

export function Choices<T extends string>({ label, value, options, onChange }: ChoicesProps<T>) {
  const name = useId();
  return (
    <fieldset className="field whole">
      <legend>{label}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
