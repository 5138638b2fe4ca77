/**
 * The pattern's pages as far as they are made. They belong to the open design, and are forgotten when the screen is left; for
 * whom it is printed, and whether the design goes along, are asked for once for each design that is opened.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { PatternPart } from '../../shared/design/pattern-schema.ts';
import type { PatternDocument } from '../../shared/pattern/page/page.ts';
import type { Finding } from '../../shared/pattern/preflight/finding.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import type { PatternEffort } from '../planning/pattern-maker.ts';
import type { TextName } from './pattern-deeds.ts';

export interface PatternView {
  /** Null until the first pages are laid out. */
  readonly document: PatternDocument | null;
  /** The plan that the pages are made from: what is printed is made from the full one. */
  readonly effort: PatternEffort;
  /** Share of the full plan that is done; null while none is being made. */
  readonly progress: number | null;
  /** The pages are not yet those of what was asked for last. */
  readonly isBehind: boolean;
  /** What would disappoint a buyer; null until the first pages are laid out. */
  readonly findings: readonly Finding[] | null;
  /** The full plan of the design's own hand; null while it is not there. */
  readonly plan: Plan | null;
  /** The texts that a designer may write anew, as they are first written; null until the first pages are laid out. */
  readonly firstTexts: Readonly<Record<TextName, string>> | null;
  /** The part that was chosen last: commands move and leave out this one. */
  readonly chosen: PatternPart | null;
  /** For whom this copy is printed; empty: for nobody by name. It is no part of the design. */
  readonly preparedFor: string;
  /** Puts the design into the PDF that is saved. */
  readonly attachDesign: boolean;
  /** Why there is no pattern, and what to do; empty where all is well. */
  readonly problem: string;
}

const noPages: PatternView = {
  document: null,
  effort: 'quick',
  progress: null,
  isBehind: false,
  findings: null,
  plan: null,
  firstTexts: null,
  chosen: null,
  preparedFor: '',
  attachDesign: false,
  problem: '',
};

export const patternView = createStore<PatternView>(() => noPages);

export function usePattern<T>(select: (state: PatternView) => T): T {
  return useStore(patternView, select);
}

/** Which opening of a design the copy was asked for. */
let copyOfOpening: unknown = null;

/** `opening`: that of the design whose pages are shown from now on. */
export function beginPages(opening: unknown): void {
  if (copyOfOpening !== opening) patternView.setState({ preparedFor: '', attachDesign: false });
  copyOfOpening = opening;
}

export function forgetPages(): void {
  patternView.setState(({ preparedFor, attachDesign }) => ({ ...noPages, preparedFor, attachDesign }));
}
