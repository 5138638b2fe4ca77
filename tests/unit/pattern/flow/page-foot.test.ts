import { describe, expect, it } from 'vitest';
import { textWidthMm } from '../../../../shared/pattern/faces/measure-text.ts';
import { finishPage } from '../../../../shared/pattern/flow/page-foot.ts';
import type { TextItem } from '../../../../shared/pattern/page/page.ts';
import { FOOT_MM, margins, papers } from '../../../../shared/pattern/page/papers.ts';
import { typeScales } from '../../../../shared/pattern/page/style.ts';

const sheet = papers.a4;
const joins = 'page 17 joins at the right, page 19 below';

/** The texts and the rule of the foot of a chart's page. */
function footOf(cells: 'standard' | 'large', stamp = '') {
  const draft = { sheet, title: 'Chart', items: [], middle: 'rows 1–26', below: joins, checkLine: true };
  const style = { title: 'Lamp', language: 'en', stamp, sizeMm: typeScales[cells].foot } as const;
  const { items } = finishPage(draft, style, 16, 38);
  const texts = items.filter((item): item is TextItem => item.kind === 'text');
  const rule = items.find((item) => item.kind === 'rule')!;
  return { texts, ruleY: rule.kind === 'rule' ? rule.y1 : 0 };
}

describe.each(['standard', 'large'] as const)('the foot of a page in %s print', (cells) => {
  it('has two lines that lie apart, below its rule and above the margin', () => {
    const { texts, ruleY } = footOf(cells, 'Edition 2');
    const size = typeScales[cells].foot;
    const [first, second] = [...new Set(texts.map(({ y }) => y))].sort((a, b) => a - b);
    expect(new Set(texts.map(({ y }) => y)).size).toBe(2);
    // Capitals are about 0.72 em high, and letters reach 0.21 em below the line (measured on the faces).
    expect(first! - 0.72 * size).toBeGreaterThan(ruleY + 0.3);
    expect(second! - 0.72 * size).toBeGreaterThan(first! + 0.21 * size);
    expect(ruleY).toBeGreaterThanOrEqual(sheet.heightMm - margins.bottom - FOOT_MM);
    expect(second! + 0.19 * size).toBeLessThanOrEqual(sheet.heightMm - margins.bottom);
  });

  it('says what joins where as far as that has room, and cuts nothing of it', () => {
    const told = footOf(cells).texts.map(({ text }) => text);
    expect(told.includes(joins)).toBe(cells === 'standard');
    expect(told.filter((text) => text.endsWith('…'))).toEqual([]);
  });

  it('sets a long stamp smaller before it cuts it, and lets nothing run into the line of 50 mm', () => {
    const stamp = 'Edition 2, 2031-05-08 · for Wanda Reet';
    const { texts } = footOf(cells, stamp);
    const line = texts.find(({ text }) => text.startsWith(stamp))!;
    expect(line.sizeMm).toBeLessThanOrEqual(typeScales[cells].foot);
    const width = textWidthMm(line.text, 'sans', line.sizeMm);
    const check = texts.find(({ align, y, text }) => align === 'right' && y === line.y && text !== '')!;
    const checkFrom = check.x - textWidthMm(check.text, 'sans', check.sizeMm);
    expect(line.x + width).toBeLessThan(checkFrom);
  });
});
