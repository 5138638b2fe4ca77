/**
 * A figure while it is being written into a field. One that can be used is kept when the field is left or Enter is
 * pressed; one that can't stays as it was written, with what is wrong beside it, and changes nothing. Escape goes back.
 */
import { type ComponentProps, useState } from 'react';

interface WrittenFigure {
  /** What the field shows where nothing is being written. */
  readonly shown: string;
  /** What is wrong with what was written, in a sentence; empty where it can be kept. */
  readonly faultIn: (written: string) => string;
  readonly onKeep: (written: string) => void;
  /** Each time that something is written; null where what was tried is dropped, or can't be used. */
  readonly onTry?: (written: string | null) => void;
}

interface FigureInput {
  /** Empty where what stands in the field can be used. */
  readonly fault: string;
  /** Leaves aside what was written: something else has changed the figure. */
  readonly drop: () => void;
  readonly input: Pick<
    ComponentProps<'input'>,
    'value' | 'inputMode' | 'aria-invalid' | 'onChange' | 'onBlur' | 'onKeyDown'
  >;
}

export function useWrittenFigure({ shown, faultIn, onKeep, onTry }: WrittenFigure): FigureInput {
  const [written, setWritten] = useState<{ readonly text: string; readonly over: string } | null>(null);
  // What was written over a figure that has changed since, as by Undo, is past.
  const text = written?.over === shown ? written.text : null;
  const fault = text === null ? '' : faultIn(text);
  const drop = () => setWritten(null);
  const keep = () => {
    if (text === null || fault !== '') return;
    if (text.trim() === shown) onTry?.(null);
    else onKeep(text);
    drop();
  };
  return {
    fault,
    drop,
    input: {
      inputMode: 'decimal',
      value: text ?? shown,
      'aria-invalid': fault !== '',
      onChange: ({ target }) => {
        setWritten({ text: target.value, over: shown });
        onTry?.(faultIn(target.value) === '' ? target.value : null);
      },
      onBlur: keep,
      onKeyDown: (event) => {
        if (event.key === 'Enter') keep();
        if (event.key !== 'Escape' || text === null) return;
        onTry?.(null);
        drop();
      },
    },
  };
}
