/** Publishing an edition, and what is told of it afterwards. Each is one step of the history. */
import { type ReactNode, useState } from 'react';
import { limits } from '../../shared/design/limits.ts';
import { addErratum, publishEdition } from '../../shared/pattern/editions/edition.ts';
import { noPages } from '../../shared/pattern/no-pages.ts';
import { ask } from '../shell/dialogs.tsx';
import { TextArea } from '../shell/fields.tsx';
import { tell, tellProblem } from '../shell/notices.tsx';
import { change } from '../store/changing.ts';
import { studio } from '../store/studio.ts';
import { patternView } from './pattern-view.ts';

export async function publishNext(): Promise<void> {
  if (patternView.getState().document?.pages.length === 0) return tellProblem(noPages.problem.sentence);
  if (!isFull()) return tell(waits);
  const note = await askForText('Publish an edition', 'What is new in it', 'Publish');
  const { open } = studio.getState();
  const { plan } = patternView.getState();
  if (note === null || !open || !plan) return;
  const edit = publishEdition(open.design, open.chart, plan, { date: today(), note });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Publish an edition', edit.value);
}

/** `number` is the edition's. */
export async function writeErratum(number: number): Promise<void> {
  const text = await askForText(`Erratum of edition ${number}`, 'What is wrong, and what is right', 'Add');
  const { open } = studio.getState();
  if (!text || !open) return;
  const edit = addErratum(open.design, number, { date: today(), text });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Add an erratum', edit.value);
}

function isFull(): boolean {
  const { effort, plan } = patternView.getState();
  return effort === 'full' && plan !== null;
}

const waits =
  'An edition is published with the full plan for the design’s own hand: wait until it is made, or switch the hand back.';

/** The day where the maker is. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function askForText(title: string, label: string, answer: string): Promise<string | null> {
  return ask<string>({
    label: title,
    body: (done) => <TextSheet title={title} label={label} answer={answer} done={done} />,
  });
}

interface TextSheetProps {
  readonly title: string;
  readonly label: string;
  readonly answer: string;
  readonly done: (text: string) => void;
}

function TextSheet({ title, label, answer, done }: TextSheetProps): ReactNode {
  const [text, setText] = useState('');
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        done(text.trim());
      }}
    >
      <h2>{title}</h2>
      <TextArea label={label} value={text} max={limits.stringChars} hint="" onChange={setText} />
      <div className="answers">
        <button type="submit" className="main">
          {answer}
        </button>
      </div>
    </form>
  );
}
