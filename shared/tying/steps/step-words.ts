/**
 * A step in words, for screen, print and the Tie screen alike. What is said stands in one table for each language
 * (`english-steps.ts`, `german-steps.ts`); here only the figures are put into the maker's units.
 */
import type { YarnId } from '../../design/codes.ts';
import type { Language } from '../../design/pattern-schema.ts';
import type { Yarn } from '../../design/schema.ts';
import { formatCutLength } from '../../units/cut-length.ts';
import { formatLength } from '../../units/length.ts';
import { toldIn } from '../../units/told-in.ts';
import type { Units } from '../../units/units.ts';
import { englishSteps } from './english-steps.ts';
import { germanSteps } from './german-steps.ts';
import type { Step } from './step.ts';
import type { StepFigures, StepForm, StepLanguage } from './step-language.ts';

export interface StepWishes {
  readonly yarnsById: ReadonlyMap<YarnId, Pick<Yarn, 'name'>>;
  readonly units: Units;
  readonly form: StepForm;
  /** Absent: English, as on the screen. */
  readonly language?: Language;
}

const languages: Readonly<Record<Language, StepLanguage>> = { en: englishSteps, de: germanSteps };

/** `yarnsById` holds at least the yarns of the chart. */
export function stepWords(step: Step, { yarnsById, units, form, language = 'en' }: StepWishes): string {
  const figures: StepFigures = {
    name(yarn) {
      const name = yarnsById.get(yarn)?.name;
      if (name === undefined) throw new Error(`the steps have a yarn ${yarn} that is not in the list`);
      return name;
    },
    atLeast: (mm) => toldIn(language, formatCutLength(mm, units)),
    about: (mm) => toldIn(language, formatLength(mm, units)),
  };
  // The compiler doesn't see that the saying found by a step's kind is for that step.
  const say = languages[language][form][step.kind] as (step: Step, figures: StepFigures) => string;
  return say(step, figures);
}
