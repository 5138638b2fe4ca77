/** The editions that were published, what changed since the last one, and errata. */
import { type ReactNode, useMemo, useState } from 'react';
import { limits } from '../../shared/design/limits.ts';
import type { Edition } from '../../shared/design/schema.ts';
import { type Change, changesSince } from '../../shared/pattern/editions/changes-since.ts';
import { addErratum, fieldsOf, publishEdition } from '../../shared/pattern/editions/edition.ts';
import { editionWords } from '../../shared/pattern/words/edition-words.ts';
import { ask } from '../shell/dialogs.tsx';
import { TextArea } from '../shell/fields.tsx';
import { tell, tellProblem } from '../shell/notices.tsx';
import { change } from '../store/changing.ts';
import { studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { patternView, usePattern } from './pattern-view.ts';

const words = editionWords.en;

export function EditionsPanel() {
  const editions = useStudio((state) => state.open?.design.editions) ?? [];
  const isFull = usePattern((view) => view.effort === 'full' && view.plan !== null);
  const changes = useChanges();
  const last = editions.at(-1);
  return (
    <details>
      <summary>Editions{last ? ` (${editions.length})` : ''}</summary>
      {!last && (
        <p>
          No edition was published yet. An edition has its number and date on every page, and keeps the chart
          and the plan that it was made with.
        </p>
      )}
      {last && (
        <section aria-label={words.changesHead(last.number)}>
          <h3>{words.changesHead(last.number)}</h3>
          {changes.length === 0 ? (
            <p>{words.noChange}</p>
          ) : (
            <ul>
              {changes.map((each) => (
                <li key={JSON.stringify(each)}>{words.change(each)}</li>
              ))}
            </ul>
          )}
        </section>
      )}
      <button type="button" aria-disabled={!isFull} onClick={() => (isFull ? publish() : tell(waits))}>
        Publish {last ? 'the next' : 'the first'} edition…
      </button>
      <ol className="publish-editions" reversed>
        {editions.toReversed().map((edition) => (
          <EditionEntry key={edition.number} {...edition} />
        ))}
      </ol>
    </details>
  );
}

const waits =
  'An edition is published with the full plan for the design’s own hand: wait until it is made, or switch the hand back.';

function useChanges(): readonly Change[] {
  const design = useStudio((state) => state.open?.design);
  const chart = useStudio((state) => state.open?.chart);
  return useMemo(() => {
    const last = design?.editions?.at(-1);
    if (!last || !design || !chart) return [];
    // The plan follows from the rest, unless the planner has learnt something: that is looked at when it is published.
    return changesSince(last.made, { ...fieldsOf(design, chart), plan: last.made.plan });
  }, [design, chart]);
}

function EditionEntry({ number, date, note, errata }: Edition) {
  return (
    <li>
      <p>
        <strong>{words.name(number, date)}</strong> {note}
      </p>
      {errata.length > 0 && (
        <ul>
          {errata.map((erratum) => (
            <li key={`${erratum.date} ${erratum.text}`}>
              {erratum.date}: {erratum.text}
            </li>
          ))}
        </ul>
      )}
      <button type="button" className="plain" onClick={() => writeErratum(number)}>
        Add an erratum…
      </button>
    </li>
  );
}

async function publish(): Promise<void> {
  const note = await askForText('Publish an edition', 'What is new in it', 'Publish');
  const { open } = studio.getState();
  const { plan } = patternView.getState();
  if (note === null || !open || !plan) return;
  const edit = publishEdition(open.design, open.chart, plan, { date: today(), note });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Publish an edition', edit.value);
}

async function writeErratum(number: number): Promise<void> {
  const text = await askForText(`Erratum of edition ${number}`, 'What is wrong, and what is right', 'Add');
  const { open } = studio.getState();
  if (!text || !open) return;
  const edit = addErratum(open.design, number, { date: today(), text });
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  change('Add an erratum', edit.value);
}

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
