import type { StepForm } from '../../../shared/tying/steps/step-language.ts';

/** How steps can be told, as they are offered. */
export const stepForms: readonly (readonly [StepForm, string])[] = [
  ['compact', 'Short'],
  ['long', 'In sentences'],
];
