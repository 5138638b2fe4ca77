/** How long the PDF pattern of each demo design takes, from the design to its bytes, and how large it is. */
import { makePattern } from '../../app/services/pattern/make-pattern.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import { inWords, timesMs } from './parts/times-ms.ts';

for (const { make } of demoDesigns) {
  const design = make();
  for (const paper of ['a4', 'letter'] as const) {
    let size = '';
    const times = await timesMs(5, async () => {
      const made = await makePattern(design, {
        paper,
        units: 'both',
        date: new Date('2026-01-01T12:00:00Z'),
      });
      if (!made.ok) throw new Error(made.problem.sentence);
      size = `${made.value.pages} pages, ${made.value.bytes.length} bytes`;
    });
    console.log(`${design.columns} x ${design.rows}, ${paper}: ${inWords(times)}; ${size}`);
  }
}
