/** How long everything for selling a pattern takes, how many files it is, and how many bytes: the demos, and a large shaded picture. */
import { makeParcel } from '../../app/services/pattern/parcel/make-parcel.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import { emptyImprint } from '../../shared/pattern/imprint.ts';
import { shadedDesign } from './plan/shaded-design.ts';

const MIB = 1024 * 1024;

for (const design of [...demoDesigns.map(({ make }) => make()), shadedDesign(200, 300)]) {
  const began = performance.now();
  const made = await makeParcel(design, {
    units: 'both',
    date: new Date('2031-05-08T12:00:00Z'),
    imprint: emptyImprint,
    languages: ['en'],
    bothHands: false,
    preparedFor: '',
  });
  if (!made.ok) throw new Error(made.problem.sentence);
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const { files } = made.value;
  const bytes = files.reduce((sum, file) => sum + file.bytes.length, 0);
  const largest = Math.max(...files.map((file) => file.bytes.length));
  console.log(
    `${design.columns} x ${design.rows}: ${seconds} s; ${files.length} files, ${(bytes / MIB).toFixed(1)} MiB, the largest ${(largest / MIB).toFixed(2)} MiB`,
  );
}
