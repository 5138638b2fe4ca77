/**
 * The parts of the screen, which F6 goes round by the platforms' convention for panes: the tags, the bar above, what
 * stands beside the chart, the chart, the tools, whatever lies over the chart at the moment, and a pattern's pages.
 */
const parts = [
  '.tags',
  '.topbar',
  '.screen aside',
  '.screen .pages',
  '.screen [role="application"]',
  '.screen .leaf-choice',
  '.screen .plan-leaf',
  '.screen .chart-panel',
  '.screen .tidy-bar',
  '.screen .tool-options',
  '.screen .tool-bar [role="toolbar"]',
  '.screen .order-bar',
  '.screen > :not(.draw, .plan)',
  '.notice.bad',
].join(',');

const focusable =
  'button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea, summary, [tabindex="0"]';

/** Puts the focus into the next part that can take it, or the one before. */
export function goToPart(by: 1 | -1): void {
  const all = [...document.querySelectorAll<HTMLElement>(parts)];
  const here = all.findLastIndex((part) => part.contains(document.activeElement));
  for (let step = 1; step <= all.length; step++) {
    const start = here < 0 && by < 0 ? 0 : here;
    const part = all[(start + by * step + all.length * step) % all.length]!;
    const first = firstIn(part);
    // A part around another, such as a screen around its column, begins where that one does: it is passed over.
    if (!first || first.contains(document.activeElement)) continue;
    first.focus();
    return;
  }
}

function firstIn(part: HTMLElement): HTMLElement | undefined {
  if (part.tabIndex >= 0) return part;
  return [...part.querySelectorAll<HTMLElement>(focusable)].find(
    (each) => each.tabIndex >= 0 && each.checkVisibility(),
  );
}
