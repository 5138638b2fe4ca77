/** Everything for selling the pattern in one go: which copies, and whether as an archive or a folder. */
import { useState } from 'react';
import { type Language, patternLanguages } from '../../../shared/design/pattern-schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { noPages } from '../../../shared/pattern/no-pages.ts';
import { languageNames, parcelWords } from '../../../shared/pattern/words/parcel-words.ts';
import { counted } from '../../../shared/units/counted.ts';
import { folderToUse, placeToSave } from '../../flows/places.ts';
import { reportSaved } from '../../flows/report-saved.ts';
import { suggestedName } from '../../flows/suggested-name.ts';
import { host } from '../../host.ts';
import { ask } from '../../shell/dialogs.tsx';
import { Choices } from '../../shell/fields.tsx';
import { tellProblem } from '../../shell/notices.tsx';
import { withProgress } from '../../shell/progress.tsx';
import { studio } from '../../store/studio.ts';
import { patternView } from '../pattern-view.ts';

interface Wishes {
  readonly languages: readonly Language[];
  readonly bothHands: boolean;
  readonly as: 'archive' | 'folder';
}

const firstWishes: Wishes = { languages: ['en'], bothHands: false, as: 'archive' };

export async function saveForSale(): Promise<void> {
  if (patternView.getState().document?.pages.length === 0) return tellProblem(noPages.problem.sentence);
  // What the sheet tells of is what is made.
  const { preparedFor } = patternView.getState();
  const wishes = await ask<Wishes>({
    label: 'Everything for selling',
    body: (answer) => <SaleSheet preparedFor={preparedFor} done={answer} />,
  });
  const { open, settings } = studio.getState();
  if (!wishes || !open) return;
  const { as, bothHands } = wishes;
  const title = open.design.title;
  const place =
    as === 'archive'
      ? await placeToSave('parcel', suggestedName(title, ' for sale.zip'))
      : await folderToUse();
  if (!place) return;
  const args = {
    text: writeDesign(open.design),
    units: settings.units,
    languages: [...wishes.languages],
    bothHands,
    preparedFor,
    as,
    target: place.handle,
  };
  const saved = await withProgress('Making everything for selling', (options) =>
    host().call('parcel.save', args, options),
  );
  // The findings beside the pages are of one copy: what is wrong with another hand's or language's is only told here.
  reportSaved(saved, ({ fileName, files, notices }) =>
    [`${fileName}: ${counted(files, 'file')}.`, ...notices.slice(0, MOST_NOTICES)].join(' '),
  );
}

function SaleSheet({ preparedFor, done }: { preparedFor: string; done: (wishes: Wishes) => void }) {
  const [wishes, setWishes] = useState(firstWishes);
  const want = (changes: Partial<Wishes>) => setWishes((now) => ({ ...now, ...changes }));
  const { languages, bothHands, as } = wishes;
  const turn = (language: Language) =>
    want({
      languages: patternLanguages.filter((each) =>
        each === language ? !languages.includes(each) : languages.includes(each),
      ),
    });
  const packs = languages.length * (bothHands ? 2 : 1);
  const hints = hintsOn(wishes);
  return (
    <form
      className="sheet publish-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (languages.length > 0) done(wishes);
      }}
    >
      <h2>Everything for selling</h2>
      <p>
        The pattern on A4 and Letter, in colour and in symbols, with cells of both sizes; pictures for the
        shop; the text of the listing.
      </p>
      {preparedFor !== '' && (
        <p className="publish-named">
          “Prepared for {preparedFor}” stands at the foot of every page but the cover.
        </p>
      )}
      <fieldset className="field whole">
        <legend>Languages</legend>
        <div className="choices">
          {patternLanguages.map((language, i) => (
            <label key={language} className="choice">
              <input
                type="checkbox"
                data-first={i === 0 || undefined}
                checked={languages.includes(language)}
                onChange={() => turn(language)}
              />
              {languageNames[language]}
            </label>
          ))}
        </div>
      </fieldset>
      <label className="choice">
        <input type="checkbox" checked={bothHands} onChange={() => want({ bothHands: !bothHands })} />
        For the left and for the right hand
      </label>
      <Choices
        label="As"
        value={as}
        options={[
          { value: 'archive', label: 'One ZIP archive' },
          { value: 'folder', label: 'A folder' },
        ]}
        onChange={(next) => want({ as: next })}
      />
      <p className={languages.length > 0 ? 'quiet' : 'fault'} role="status">
        {languages.length > 0 ? whatIsMade(packs) : 'Choose a language at least.'}
      </p>
      {hints.map((hint) => (
        <p key={hint} className="hint">
          {hint}
        </p>
      ))}
      <div className="answers">
        <button type="submit" className="main" aria-disabled={languages.length === 0}>
          Make them…
        </button>
      </div>
    </form>
  );
}

/** Two papers, two inks, two sizes of cells. */
const copiesOfOne = 8;

/** `packs`: one for each language and hand. */
function whatIsMade(packs: number): string {
  const pictures = Object.keys(parcelWords.en.pictures).length;
  const each = packs === 1 ? '' : ', each language and hand in a folder of its own';
  const files = packs * (copiesOfOne + pictures + 1);
  return `${packs * copiesOfOne} patterns, ${counted(packs * pictures, 'picture')} for the shop and ${counted(packs, 'listing')}: ${files} files${each}.`;
}

/** What is not asked for here and shows in what is made. */
function hintsOn({ languages, bothHands }: Wishes): string[] {
  const { open, settings } = studio.getState();
  const { findings } = patternView.getState();
  if (!open) return [];
  const { leftHanded } = copyOf(open.design);
  const units = { metric: 'metric units', us: 'US units', both: 'metric and US units' }[settings.units];
  const hand = bothHands ? '' : `, for the ${leftHanded ? 'left' : 'right'} hand`;
  const hasOwnTexts = Object.keys(open.design.pattern?.texts ?? {}).length > 0;
  return [
    `All in ${units}${hand}, as it is set under “How it is printed”.`,
    ...(hasOwnTexts && languages.length > 1
      ? ['Texts of your own stand in all languages as you wrote them.']
      : []),
    ...(findings && findings.length > 0
      ? [`${counted(findings.length, 'finding is', 'findings are')} still open under “Before it is sold”.`]
      : []),
  ];
}

/** More than these bury what was saved; the command line prints them all. */
const MOST_NOTICES = 4;
