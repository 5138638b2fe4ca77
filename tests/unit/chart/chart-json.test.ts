import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { chartHash, chartJson } from '../../../shared/chart/chart-json.ts';
import { designFromLetters } from '../../notation.ts';

describe('the flat chart as JSON', () => {
  const design = designFromLetters(['aab', 'b.-', 'bbb']);
  const yarns = [design.yarns[1]!, design.yarns[0]!, design.yarns[4]!];
  const json = chartJson({ ...design, yarns }, flatten({ ...design, startCorner: 'top-right' }));

  it('has its keys in the published order, runs for each row, and null for bare', () => {
    expect(JSON.stringify(json)).toBe(
      [
        '{"format":"larkrow-chart","version":1,"columns":3,"rows":3,"startCorner":"top-right",',
        '"yarns":[{"id":"y2","name":"Dusk","symbol":"b","color":"#566a94"},',
        '{"id":"y1","name":"Linen","symbol":"a","color":"#e6ddc9"},',
        '{"id":"y5","name":"Madder","symbol":"e","color":"#9e3329"}],',
        '"cells":[[["y1",2],["y2",1]],[["y2",1],[null,2]],[["y2",3]]]}',
      ].join(''),
    );
  });

  it('has as hash the SHA-256 of that text in UTF-8, as the platform computes it', () => {
    const named = { ...json, yarns: [{ ...json.yarns[0]!, name: 'Мох 🧶' }] };
    const sha256 = createHash('sha256').update(JSON.stringify(named), 'utf8').digest('hex');
    expect(chartHash(named)).toBe(sha256);
  });

  it('has another hash where one cell differs, and the same where only a layer was merged down', () => {
    const hash = (...letters: Parameters<typeof designFromLetters>) => {
      const drawn = designFromLetters(...letters);
      return chartHash(chartJson(drawn, flatten(drawn)));
    };
    expect(hash(['aab', 'bba'])).not.toBe(hash(['aab', 'bbb']));
    expect(
      hash([
        ['aaa', 'bbb'],
        ['..b', '...'],
      ]),
    ).toBe(hash(['aab', 'bbb']));
  });
});
