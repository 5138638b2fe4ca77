/** Writing the pattern and the chart's picture, with progress and a way to stop. */
import { writeDesign } from '../../shared/design/write-design.ts';
import { copyOf } from '../../shared/pattern/copy.ts';
import { noPages } from '../../shared/pattern/no-pages.ts';
import { counted } from '../../shared/units/counted.ts';
import { host } from '../host.ts';
import { patternView } from '../publish/pattern-view.ts';
import { tellProblem } from '../shell/notices.tsx';
import { withProgress } from '../shell/progress.tsx';
import { studio } from '../store/studio.ts';
import { placeToSave } from './places.ts';
import { reportSaved } from './report-saved.ts';

export async function savePattern(): Promise<void> {
  const { open, settings } = studio.getState();
  if (!open) return;
  const { preparedFor, attachDesign, document } = patternView.getState();
  if (document?.pages.length === 0) return tellProblem(noPages.problem.sentence);
  const copy = { ...copyOf(open.design), preparedFor };
  const { paper, units } = settings;
  const paperName = paper === 'a4' ? 'A4' : 'Letter';
  const place = await placeToSave('pattern', `${open.design.title} ${paperName}.pdf`);
  if (!place) return;
  const text = writeDesign(open.design);
  const saved = await withProgress('Making the pattern', (options) =>
    host().call('pattern.save', { text, paper, units, copy, attachDesign, target: place.handle }, options),
  );
  reportSaved(saved, ({ fileName, pages }) => `${fileName}: ${counted(pages, 'page')}.`);
}

/** `fitted`: each piece cut as long as it is used, not at the working length. True where they were saved. */
export async function saveLabels(fitted: boolean): Promise<boolean> {
  const { open, settings } = studio.getState();
  if (!open) return false;
  const { paper, units } = settings;
  const place = await placeToSave('pattern', `${open.design.title} labels.pdf`);
  if (!place) return false;
  const args = { text: writeDesign(open.design), paper, units, fitted, target: place.handle };
  const saved = await withProgress('Making the labels', (options) =>
    host().call('labels.save', args, options),
  );
  reportSaved(saved, ({ fileName, pages }) => `${fileName}: ${counted(pages, 'page')} of labels.`);
  return saved.ok;
}

export async function saveChartPng(): Promise<void> {
  const { open } = studio.getState();
  if (!open) return;
  const place = await placeToSave('png', `${open.design.title} chart.png`);
  if (!place) return;
  const saved = await host().call('png.save', { text: writeDesign(open.design), target: place.handle });
  reportSaved(saved, ({ fileName }) => `Saved ${fileName}.`);
}
