/** Publishing an edition, and what is told of it afterwards. Each is one step of the history. */
import { type ReactNode, useState } from 'react';
import { limits } from '../../../shared/design/limits.ts';
import { addErratum, changesSinceLast, publishEdition } from '../../../shared/pattern/editions/edition.ts';
import { noPages } from '../../../shared/pattern/no-pages.ts';
import { editionWords } from '../../../shared/pattern/words/edition-words.ts';
import { ask } from '../../shell/dialogs.tsx';
import { TextArea } from '../../shell/fields.tsx';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';
import { patternView } from '../pattern-view.ts';

const words = editionWords.en;

export async function publishNext(): Promise<void> {
  if (patternView.getState().document?.pages.length === 0) return tellProblem(noPages.problem.sentence);
  const missing = whyNoPlan();
  if (missing) return tell(missing);
  const last = studio.getState().open?.design.editions?.at(-1);
  const number = (last?.number ?? 0) + 1;
  const note = await askForText({
    title: `Publish edition ${number}`,
    above: <ChangesSoFar />,
    text: `“${words.name(number, today())}” stands at the foot of every page but the cover from now on, until the design is changed. What the edition is made with is kept in the design: chart, plan, parts and texts. No file is written yet.`,
    label: last ? `What is new since edition ${last.number}` : 'A note of your own',
    hint: 'Kept beside the edition; it may be empty.',
    answer: `Publish edition ${number}`,
  });
  const { open } = studio.getState();
  const { plan } = patternView.getState();
  if (note === null || !open || !plan) return;
  const edit = publishEdition(open.design, open.chart, plan, { date: today(), note });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Publish an edition', edit.value);
  tell(`Edition ${number} is published. Save its files now: what is saved carries its number and date.`);
}

/** `number` is the edition's. */
export async function writeErratum(number: number): Promise<void> {
  const text = await askForText({
    title: `Erratum of edition ${number}`,
    text: 'It is printed on the designer’s page of this edition, with the date of today.',
    label: 'What is wrong, and what is right',
    hint: 'For example: Row 3 begins with 2 Night, not with 3.',
    required: true,
    answer: 'Add the erratum',
  });
  const { open } = studio.getState();
  if (!text || !open) return;
  const edit = addErratum(open.design, number, { date: today(), text });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Add an erratum', edit.value);
}

/** An edition keeps the full plan for the design's own hand: why there is none, and what to do; empty where there is one. */
function whyNoPlan(): string {
  const { effort, plan, progress } = patternView.getState();
  if (effort === 'full' && plan !== null) return '';
  if (effort === 'full')
    return 'An edition keeps the plan for the design’s own hand: switch the hand back under “How it is printed”.';
  if (progress === null)
    return 'An edition keeps the full plan, which was stopped: press “Make the full plan” first.';
  return 'An edition keeps the full plan, which is being made: wait until it is there.';
}

/** The day where the maker is. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** So that what is new need not be remembered. */
function ChangesSoFar(): ReactNode {
  const { open } = studio.getState();
  const last = open?.design.editions?.at(-1);
  if (!open || !last) return null;
  const changes = changesSinceLast(open.design, open.chart);
  return (
    <>
      <p>{words.changesHead(last.number)}:</p>
      <ul>
        {(changes.length > 0 ? changes.map(words.change) : [words.noChange]).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

interface Asked {
  readonly title: string;
  /** What it means. */
  readonly text: string;
  /** Stands over the field. */
  readonly above?: ReactNode;
  readonly label: string;
  readonly hint: string;
  readonly required?: boolean;
  readonly answer: string;
}

function askForText(asked: Asked): Promise<string | null> {
  return ask<string>({ label: asked.title, body: (done) => <TextSheet {...asked} done={done} /> });
}

function TextSheet({ title, text, above, answer, done, ...field }: Asked & { done: (text: string) => void }) {
  const [written, setWritten] = useState('');
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        done(written.trim());
      }}
    >
      <h2>{title}</h2>
      <p>{text}</p>
      {above}
      <TextArea {...field} first value={written} max={limits.stringChars} onChange={setWritten} />
      <div className="answers">
        <button type="submit" className="main">
          {answer}
        </button>
      </div>
    </form>
  );
}
