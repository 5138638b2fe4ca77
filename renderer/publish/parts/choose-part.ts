/**
 * The part that the work is about: its pages and its texts are brought into sight, and commands move and leave out this one. The
 * focus stays where it is.
 */
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import { showPage } from '../pages/show-page.ts';
import { patternView } from '../pattern-view.ts';
import { patternTexts } from '../texts/pattern-texts.ts';
import { unfold } from '../unfold.ts';

export function choosePart(part: PatternPart): void {
  patternView.setState({ chosen: part });
  const pages = patternView.getState().document?.pages ?? [];
  const at = pages.findIndex((page) => page.part === part);
  if (at >= 0) showPage(at + 1);
  if (patternTexts.some((text) => text.part === part)) unfold('texts', `[data-part="${part}"]`);
}
