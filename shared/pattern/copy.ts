/**
 * One copy of a pattern: for whom and how it is printed. A pattern is sold in several of them, from one design: on A4 and
 * Letter, in colour and for printers without it, with larger cells, for the left hand, in another language.
 */
import type { Design } from '../design/design.ts';
import type { CopySettings } from '../design/schema.ts';

/** What is chosen of a copy, complete; `preparedFor` names its buyer and is empty where nobody is named. */
export type Copy = { readonly [K in keyof Required<CopySettings>]: NonNullable<CopySettings[K]> } & {
  readonly preparedFor: string;
};

/** The copy that the design's own settings ask for, where nothing else is wished. */
export function copyOf({ pattern, startCorner }: Pick<Design, 'pattern' | 'startCorner'>): Copy {
  return {
    language: 'en',
    ink: 'colour',
    cells: 'standard',
    rowsForm: 'long',
    rowsBeside: false,
    leftHanded: startCorner === 'top-right',
    ...defined(pattern?.copy ?? {}),
    preparedFor: '',
  };
}

/** The design as this copy ties it. Its start corner may differ, and then so does its plan: it is asked for before planning. */
export function designForCopy(design: Design, { leftHanded }: Pick<Copy, 'leftHanded'>): Design {
  const startCorner = leftHanded ? 'top-right' : 'top-left';
  return startCorner === design.startCorner ? design : { ...design, startCorner };
}

function defined(settings: CopySettings): Partial<Copy> {
  return Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== undefined));
}
