/** What is wrong with the page for whoever does not see, point or hold still as most people do. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Axe {
  run(options: RunOptions): Promise<AxeResults>;
}

/** The least width and height of a target, in CSS pixels. Source: WCAG 2.2, success criterion 2.5.8. */
const leastTargetPx = 24;

/**
 * Serious and critical findings of axe-core, a published checker of the Web Content Accessibility Guidelines, as
 * 'rule: where'; and controls that are too small to be hit.
 */
export async function seriousFindings(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  // What is in order needs no words: to write it down takes three times as long as to find it.
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: Axe }).axe.run({ resultTypes: ['violations'] }),
  );
  const found = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
  return [...found, ...(await smallTargets(page))];
}

/** A box to be ticked is as large as its label, which can be pressed too. */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const controls = document.querySelectorAll<HTMLElement>(
      'button, input, select, textarea, summary, [role="slider"], [role="option"]',
    );
    return [...controls].flatMap((control) => {
      const isTicked = control.matches('input[type="checkbox"], input[type="radio"]');
      const target = (isTicked && control.closest('label')) || control;
      const { width, height } = target.getBoundingClientRect();
      if (!control.checkVisibility() || (width >= least && height >= least)) return [];
      const name = control.getAttribute('aria-label') ?? control.textContent;
      return [`target of ${Math.round(width)} × ${Math.round(height)}: ${control.tagName} ${name}`];
    });
  }, leastTargetPx);
}
