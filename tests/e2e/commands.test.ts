/** The command list: what it offers on which screen, that all of it can be run, and how one gets about without a pointer. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type Command, commands } from '../../shared/commands.ts';
import { designFromLetters } from '../notation.ts';
import { drawing } from './drawing.ts';
import { runCommand, runLabelled } from './run-command.ts';
import { openStudio } from './studio.ts';

const all: readonly Command[] = commands;
const small = ['aaaaaaaa', 'aabbbbaa', 'aabaabaa', 'aabbbbaa', 'aaaaaaaa', 'acaaaaca'];

/** What the list says of each command that can't be run now, by the command's label. */
async function refused(page: Page): Promise<Record<string, string>> {
  await page.keyboard.press('F1');
  await page.getByRole('dialog', { name: 'Find a command' }).waitFor();
  const told = await page
    .locator('[role="option"][aria-disabled="true"]')
    .evaluateAll((options) =>
      options.map((option) => [...option.querySelectorAll('span')].map((part) => part.textContent ?? '')),
    );
  await page.keyboard.press('Escape');
  return Object.fromEntries(told.map(([label, why]) => [label, why]));
}

const labelsOf = (which: (command: Command) => boolean) =>
  all
    .filter(which)
    .map(({ label }) => label)
    .sort();

describe('the command list', () => {
  it('offers on each screen what can be done there, and says of the rest why it can’t', async () => {
    const { page } = await openStudio();
    await page.getByRole('button', { name: 'Open Moth at the window' }).waitFor();
    const onShelf = await refused(page);
    expect(Object.keys(onShelf).sort()).toEqual(labelsOf(({ needs }) => needs !== undefined));
    expect(new Set(Object.values(onShelf))).toEqual(new Set(['open a design first']));

    await page.getByRole('button', { name: 'Open Moth at the window' }).click();
    await page.getByRole('application').waitFor();
    const onDraw = Object.values(await refused(page));
    expect(onDraw.filter((why) => !/^on the (Plan|Publish) screen$/.test(why))).toEqual([]);

    await page.keyboard.press('Control+1');
    const back = await refused(page);
    expect(back.Knot).toBe('on the Draw screen');
    expect(back.Save).toBeUndefined();
  });

  it('leads to every command of the Draw screen, none of which fails', async () => {
    const { page, errors } = await drawing(designFromLetters(small));
    const skipped = [
      'find-command',
      'open',
      'picture',
      'close',
      'save-as',
      'save-pattern',
      'save-for-sale',
      'save-papers',
      'save-png',
    ];
    const here = all.filter(
      ({ id, needs }) =>
        needs !== 'plan' && needs !== 'publish' && !id.startsWith('go-') && !skipped.includes(id),
    );
    for (const { id, label } of here) {
      await page.evaluate(() => document.querySelector<HTMLElement>('[role="application"]')?.focus());
      await runLabelled(page, label);
      // Whatever was asked, or is being looked at, is let go of again.
      for (let i = 0; i < 2; i++) await page.keyboard.press('Escape');
      expect(errors, id).toEqual([]);
      expect(await page.getByRole('dialog').count(), id).toBe(0);
    }
  });

  it('shows first what was used last, and what the chart’s keys do', async () => {
    const { page } = await drawing(designFromLetters(small));
    await runCommand(page, 'mirror both');
    await page.keyboard.press('F1');
    const first = page.getByRole('group', { name: 'Used last' }).getByRole('option');
    expect(await first.textContent()).toContain('Mirror both ways');
    await page.getByText('Keys on the chart').click();
    await page.getByText('ten rows up or down').waitFor();
  });
});

describe('about the screen by keys', () => {
  const focused = (page: Page) =>
    page.evaluate(() => {
      const { activeElement: element } = document;
      if (!element || element === document.body) return null;
      const { left, top, right, bottom } = element.getBoundingClientRect();
      // A chart's ring is a frame above its picture, which would cover an outline of the chart's own.
      const rings = [getComputedStyle(element), getComputedStyle(element, '::after')];
      return {
        what: `${element.tagName} ${element.getAttribute('aria-label') ?? element.textContent}`,
        isSeen: bottom > 0 && right > 0 && top < innerHeight && left < innerWidth,
        hasRing: rings.some(
          ({ outlineStyle, outlineWidth }) => outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
        ),
      };
    });

  it('Tab goes round and comes back, and wherever it stops is in sight and outlined', async () => {
    const { page } = await drawing(designFromLetters(small));
    const chart = page.getByRole('application');
    await chart.focus();
    const stops: string[] = [];
    for (let i = 0; i < 120; i++) {
      await page.keyboard.press('Tab');
      const stop = await focused(page);
      if (!stop) continue;
      expect(stop).toMatchObject({ isSeen: true, hasRing: true });
      if (stop.what.startsWith('DIV Chart of')) break;
      stops.push(stop.what);
    }
    expect((await focused(page))?.what).toMatch(/^DIV Chart of/);
    // One stop for all tools, by the toolbar pattern of the WAI-ARIA Authoring Practices.
    expect(stops.filter((what) => /^BUTTON (Knot|Line|Fill|Patch)$/.test(what))).toEqual(['BUTTON Knot']);
  });

  it('arrows go along a tool bar and round, Home and End to its ends', async () => {
    const { page } = await drawing(designFromLetters(small));
    await page.getByRole('button', { name: 'Knot', exact: true }).focus();
    const names: (string | undefined)[] = [];
    for (const key of ['ArrowRight', 'End', 'ArrowRight', 'ArrowLeft', 'Home']) {
      await page.keyboard.press(key);
      names.push((await focused(page))?.what);
    }
    expect(names).toEqual(['Line', 'Border', 'Knot', 'Border', 'Knot'].map((name) => `BUTTON ${name}`));
  });

  it('Undo keeps the focus when nothing is left to undo', async () => {
    const { page } = await drawing(designFromLetters(small));
    await page.getByRole('application').focus();
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Undo' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    expect((await focused(page))?.what).toBe('BUTTON Undo');
  });

  it('the cell cursor stays where it is while a pointer rests on the page and a list was open', async () => {
    const { page } = await drawing(designFromLetters(small));
    const chart = page.getByRole('application');
    const room = (await chart.boundingBox())!;
    await page.mouse.move(room.x + room.width - 30, room.y + room.height - 30);
    await chart.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('v');
    await page.keyboard.press('F1');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.waitForTimeout(200);
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('.under').textContent()).toContain('Row 4 ←, cord 2');
  });

  it('F6 goes round the parts of the screen, forth and back, and Control+2 comes to the chart', async () => {
    const { page } = await drawing(designFromLetters(small));
    await page.getByRole('application').focus();
    const seen: string[] = [];
    for (let i = 0; i < 8; i++) {
      await page.keyboard.press('F6');
      seen.push((await focused(page))?.what ?? '');
    }
    expect(seen.filter((what) => what.startsWith('DIV Chart of'))).toHaveLength(1);
    expect(new Set(seen).size).toBeGreaterThanOrEqual(7);
    await page.keyboard.press('Shift+F6');
    expect((await focused(page))?.what).toBe(seen.at(-2));
    await page.keyboard.press('Control+2');
    expect((await focused(page))?.what).toMatch(/^DIV Chart of/);
  });

  it('a list of rows tells the chart as text, and leads to a row of it', async () => {
    const rows = Array.from({ length: 90 }, (_, i) => (i % 2 === 0 ? 'aabb' : 'abab'));
    const { page } = await drawing(designFromLetters(rows));
    await page.getByRole('application').focus();
    await runCommand(page, 'rows as text');
    const dialog = page.getByRole('dialog', { name: 'Rows as text' });
    expect(await dialog.getByRole('listitem').count()).toBe(40);
    expect(await dialog.getByRole('listitem').first().textContent()).toContain(
      'Row 1, left to right: 2 Linen (1-2), 2 Dusk (3-4); lift 3.',
    );
    await dialog.getByLabel('Row', { exact: true }).fill('82');
    await dialog.getByText('Rows 81 to 90 of 90.').waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByText('Row 82, cord 1, Linen').waitFor({ state: 'attached' });
    expect((await focused(page))?.what).toMatch(/^DIV Chart of/);
  });
});

describe('in a small window, or a large one at 200 %', () => {
  /** Controls that can't be pressed once they were scrolled to: covered by others, or cut off. */
  const outOfReach = (page: Page) =>
    page.evaluate(() => {
      const shown = document.querySelector('dialog[open]') ?? document;
      const controls = [
        ...shown.querySelectorAll<HTMLElement>('button, input, select, textarea, summary'),
      ].filter((each) => each.checkVisibility());
      return controls.flatMap((control) => {
        control.scrollIntoView({ block: 'center', inline: 'center' });
        const { left, top, width, height } = control.getBoundingClientRect();
        const hit = document.elementFromPoint(left + width / 2, top + height / 2);
        const isHit = control.contains(hit) || control.closest('label')?.contains(hit);
        return isHit ? [] : [control.getAttribute('aria-label') ?? control.textContent ?? control.tagName];
      });
    });

  it('nothing is out of reach', async () => {
    const { page } = await drawing(designFromLetters(small), { width: 640, height: 400 });
    expect(await outOfReach(page)).toEqual([]);
    await page.keyboard.press('Control+a');
    expect(await outOfReach(page), 'a patch').toEqual([]);
    for (const words of ['this hanging', 'add a yarn', 'recolour', 'resize', 'rows as text', 'settings']) {
      await runCommand(page, words);
      await page.getByRole('dialog').waitFor();
      expect(await outOfReach(page), words).toEqual([]);
      await page.keyboard.press('Escape');
    }
    for (const screen of ['1', '4']) {
      await page.keyboard.press(`Control+${screen}`);
      await page.waitForTimeout(500);
      expect(await outOfReach(page), `screen ${screen}`).toEqual([]);
    }
  });
});
