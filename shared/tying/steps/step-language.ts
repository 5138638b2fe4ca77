/** How a language says the steps. English is in `english-steps.ts`; another language is another such table. */
import type { YarnId } from '../../design/codes.ts';
import type { StepKind, StepsByKind } from './step.ts';

/** 'compact' for a list beside the chart, 'long' for one step at a time: a whole sentence or more. */
export type StepForm = 'compact' | 'long';

/** What the words are made with. */
export interface StepFigures {
  name(yarn: YarnId): string;
  /** Of a tail: never less than it must be. */
  atLeast(mm: number): string;
  /** Of a carry. */
  about(mm: number): string;
}

/** How one language says each kind of step. */
export type StepLanguage = {
  readonly [Form in StepForm]: {
    readonly [Kind in StepKind]: (step: StepsByKind[Kind], figures: StepFigures) => string;
  };
};
