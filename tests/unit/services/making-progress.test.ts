/** How far a pattern is, as it tells while it is made. */
import { describe, expect, it } from 'vitest';
import { makePattern } from '../../../app/services/pattern/make-pattern.ts';
import type { Progress } from '../../../shared/bridge.ts';
import { mottledDesign } from '../../bench/parts/mottled-design.ts';

const date = new Date('2031-05-08T12:00:00Z');
const isGrowing = (heard: readonly Progress[]) =>
  heard.every(({ done }, i) => done >= (heard[i - 1]?.done ?? 0) && done <= 1);

describe('a pattern', () => {
  it('tells while its plan is made, and then page by page', async () => {
    const heard: Progress[] = [];
    const onProgress = (progress: Progress) => heard.push(progress);
    const made = await makePattern(mottledDesign(40, 40), { paper: 'a4', units: 'metric', date, onProgress });
    if (!made.ok) throw new Error(made.problem.sentence);
    expect(isGrowing(heard)).toBe(true);
    const planning = heard.filter(({ what }) => what === 'Planning the strands');
    expect(planning.length).toBeGreaterThan(3);
    expect(planning.every(({ done }) => done <= 0.5)).toBe(true);
    const pages = heard.filter(({ what }) => what.startsWith('Page '));
    expect(pages).toHaveLength(made.value.pages);
    expect(pages.every(({ done }) => done >= 0.5)).toBe(true);
    expect(heard.at(-1)).toEqual({ done: 1, what: 'The pattern is ready' });
  });
});
