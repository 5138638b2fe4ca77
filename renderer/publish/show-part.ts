/** Brings pages into sight, and the focus to the first of them. */
import type { PatternPart } from '../../shared/design/pattern-schema.ts';
import { patternView } from './pattern-view.ts';

export function showPart(part: PatternPart): void {
  const pages = patternView.getState().document?.pages ?? [];
  const at = pages.findIndex((page) => page.part === part);
  if (at >= 0) showPage(at + 1);
}

/** Counted from 1. */
export function showPage(number: number): void {
  const page = document.querySelector<HTMLElement>(`.publish .pages [data-page="${number}"]`);
  page?.scrollIntoView({ block: 'start' });
  page?.focus({ preventScroll: true });
}
