/** The papers that go with the finished hanging: which of them, and what stands on its labels. */
import { useState } from 'react';
import { limits } from '../../../shared/design/limits.ts';
import type { PatternSettings } from '../../../shared/design/schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { type HangingPaper, hangingPapers } from '../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { counted } from '../../../shared/units/counted.ts';
import { placeToSave } from '../../flows/places.ts';
import { reportSaved } from '../../flows/report-saved.ts';
import { suggestedName } from '../../flows/suggested-name.ts';
import { host } from '../../host.ts';
import { ask } from '../../shell/dialogs.tsx';
import { TextField } from '../../shell/fields.tsx';
import { withProgress } from '../../shell/progress.tsx';
import { studio } from '../../store/studio.ts';
import { setLabels } from '../pattern-deeds.ts';

type Labels = NonNullable<PatternSettings['labels']>;

interface Wishes {
  readonly which: readonly HangingPaper[];
  readonly labels: Labels;
}

const names: Readonly<Record<HangingPaper, string>> = {
  'care-card': 'Care card',
  'fibre-label': 'Label with the fibres',
  'price-tag': 'Price tag',
  backing: 'Backing, to scale',
  'backing-tiles': 'Backing in true size, on several sheets',
  'packing-note': 'Packing note',
};

const usual: readonly HangingPaper[] = hangingPapers.filter((each) => each !== 'backing-tiles');

export async function savePapers(): Promise<void> {
  const before = studio.getState().open?.design.pattern?.labels ?? {};
  const wishes = await ask<Wishes>({
    label: 'Papers for the hanging',
    body: (answer) => <PapersSheet labels={before} done={answer} />,
  });
  if (!wishes) return;
  setLabels(wishes.labels);
  const { open, settings } = studio.getState();
  if (!open) return;
  const place = await placeToSave('pattern', suggestedName(open.design.title, ' papers.pdf'));
  if (!place) return;
  const { paper, units } = settings;
  const args = {
    text: writeDesign(open.design),
    paper,
    units,
    copy: copyOf(open.design),
    which: [...wishes.which],
    target: place.handle,
  };
  const saved = await withProgress('Making the papers', (options) =>
    host().call('papers.save', args, options),
  );
  reportSaved(saved, ({ fileName, pages, notices }) =>
    [`${fileName}: ${counted(pages, 'page')}.`, ...notices].join(' '),
  );
}

function PapersSheet({ labels: before, done }: { labels: Labels; done: (wishes: Wishes) => void }) {
  const [which, setWhich] = useState(usual);
  const [labels, setFibres] = useState(before);
  const turn = (paper: HangingPaper) =>
    setWhich(hangingPapers.filter((each) => (each === paper ? !which.includes(each) : which.includes(each))));
  return (
    <form
      className="sheet publish-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (which.length > 0) done({ which, labels });
      }}
    >
      <h2>Papers for the hanging</h2>
      <fieldset className="field whole">
        <legend>Which</legend>
        {hangingPapers.map((paper, i) => (
          <label key={paper} className="choice">
            <input
              type="checkbox"
              data-first={i === 0 || undefined}
              checked={which.includes(paper)}
              onChange={() => turn(paper)}
            />
            {names[paper]}
          </label>
        ))}
      </fieldset>
      <div className="fields">
        <TextField
          label="Fibre of the cord"
          value={labels.cordFibre ?? ''}
          max={limits.nameChars}
          onChange={(cordFibre) => setFibres({ ...labels, cordFibre })}
        />
        <TextField
          label="Fibre of the yarn"
          value={labels.yarnFibre ?? ''}
          max={limits.nameChars}
          onChange={(yarnFibre) => setFibres({ ...labels, yarnFibre })}
        />
      </div>
      <p className="hint">Rules for fibre labels and product safety differ by country: local rules decide.</p>
      {which.length === 0 && (
        <p className="fault" role="status">
          Choose one of them at least.
        </p>
      )}
      <div className="answers">
        <button type="submit" className="main" aria-disabled={which.length === 0}>
          Make them…
        </button>
      </div>
    </form>
  );
}
