/**
 * One setting: a figure with its unit, two buttons to change it by a step, and a sentence of what it means. What is
 * written is tried at once, and becomes a step of the history when it is kept (`use-written-figure.ts`). Where it may be
 * left empty, that has a meaning too.
 */
import { useId } from 'react';
import { numberFault, shownNumber, writtenNumber } from '../../shell/written-number.ts';
import { useWrittenFigure } from '../leaves/use-written-figure.ts';

interface SettingFieldProps {
  /** By which it is found from elsewhere. */
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  /** The unit behind a 1, where it is another. */
  readonly one?: string | undefined;
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
  /** What speaks against a figure within the limits, in a sentence; empty where nothing does. */
  readonly against?: (figure: number | null) => string;
  /** Null: what was tried is dropped. Its figure is null where the field was emptied. */
  readonly onTry: (written: { readonly figure: number | null } | null) => void;
  readonly onKeep: (figure: number | null) => void;
}

const arrows: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1 };

export function SettingField(props: SettingFieldProps) {
  const {
    name,
    label,
    unit,
    one = unit,
    explained,
    value,
    min,
    max,
    whole,
    press,
    empty,
    against,
    onTry,
    onKeep,
  } = props;
  const id = useId();
  const figureOf = (written: string) =>
    empty !== undefined && written.trim() === '' ? null : writtenNumber(written);
  const faultIn = (written: string) => {
    const figure = figureOf(written);
    const fault = figure === null ? '' : numberFault(written, { min, max, whole, unit });
    return fault || (against?.(figure) ?? '');
  };
  const { fault, drop, input } = useWrittenFigure({
    shown: value === null ? '' : shownNumber(value),
    faultIn,
    onKeep: (written) => onKeep(figureOf(written)),
    onTry: (written) => onTry(written === null ? null : { figure: figureOf(written) }),
  });
  // Out of a figure that can't be, as a file may have it, every step is a way.
  const isFaulty = faultIn(value === null ? '' : shownNumber(value)) !== '';
  const within = (number: number) => Math.min(max, Math.max(min, Math.round(number * 1000) / 1000));
  // What is being written counts, where it can be used.
  const written = String(input.value);
  const now = faultIn(written) === '' ? figureOf(written) : value;
  const pressed = (by: number) => within(now === null ? (empty?.first ?? min) : now + by);
  const canPress = (by: number) =>
    (now === null || pressed(by) !== now) && (isFaulty || faultIn(shownNumber(pressed(by))) === '');
  const pressBy = (by: number) => {
    if (!canPress(by)) return;
    drop();
    onKeep(pressed(by));
  };
  return (
    <div className="setting">
      <label htmlFor={id}>{label}</label>
      <div className="setting-figure">
        <button
          type="button"
          // The field's own arrow keys do the same.
          tabIndex={-1}
          aria-label={`${label}: less`}
          aria-disabled={!canPress(-press)}
          onClick={() => pressBy(-press)}
        >
          −
        </button>
        <input
          id={id}
          name={name}
          placeholder={empty?.means}
          aria-describedby={`${id}-unit ${id}-hint`}
          aria-keyshortcuts="ArrowUp ArrowDown"
          {...input}
          onKeyDown={(event) => {
            const by = arrows[event.key];
            if (by === undefined) input.onKeyDown?.(event);
            else {
              event.preventDefault();
              pressBy(by * press);
            }
          }}
        />
        <span id={`${id}-unit`} className="unit">
          {input.value === '1' ? one : unit}
        </span>
        <button
          type="button"
          tabIndex={-1}
          aria-label={`${label}: more`}
          aria-disabled={!canPress(press)}
          onClick={() => pressBy(press)}
        >
          +
        </button>
      </div>
      <p id={`${id}-hint`} className={fault ? 'fault' : 'hint'} aria-live="polite">
        {fault || explained}
      </p>
    </div>
  );
}
