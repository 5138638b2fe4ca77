/** Labelled fields for dialogs. A figure that can't be used is said so in words, and nothing else is lost. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';

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

export function NumberField({
  label,
  value,
  onChange,
  min,
  max,
  whole = false,
  hint,
  first = false,
}: NumberFieldProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  /** What is being written; null where the field shows its value. */
  const [text, setText] = useState<string | null>(null);
  const fault = text === null ? '' : faultOf(text, min, max, whole);
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
        value={text ?? shown(value)}
        aria-invalid={fault !== ''}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          setText(event.target.value);
          if (faultOf(event.target.value, min, max, whole) === '') onChange(numberOf(event.target.value));
        }}
        onBlur={() => fault === '' && setText(null)}
      />
      <span id={`${id}-hint`} className={fault ? 'fault' : 'hint'}>
        {fault || hint}
      </span>
    </div>
  );
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

/** People write 4,8 and 4.8. */
function numberOf(text: string): number {
  return text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.'));
}

function shown(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

function faultOf(text: string, min: number, max: number, whole: boolean): string {
  const number = numberOf(text);
  if (!Number.isFinite(number) || (whole && !Number.isInteger(number)))
    return whole ? 'Write a whole number.' : 'Write a number.';
  if (number < min) return `At least ${shown(min)}.`;
  if (number > max) return `At most ${shown(max)}.`;
  return '';
}
