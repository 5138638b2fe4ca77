/** The editions that were published, what changed since the last one, and errata. */
import { useMemo } from 'react';
import type { Edition } from '../../../shared/design/schema.ts';
import type { Change } from '../../../shared/pattern/editions/changes-since.ts';
import { changesSinceLast } from '../../../shared/pattern/editions/edition.ts';
import { editionWords } from '../../../shared/pattern/words/edition-words.ts';
import { saveEdition } from '../../flows/exporting.ts';
import { useStudio } from '../../store/use-studio.ts';
import { usePattern } from '../pattern-view.ts';
import { publishNext, writeErratum } from './edition-deeds.tsx';

const words = editionWords.en;

export function EditionsPanel() {
  const editions = useStudio((state) => state.open?.design.editions) ?? [];
  const isFull = usePattern((view) => view.effort === 'full' && view.plan !== null);
  const changes = useChanges();
  const last = editions.at(-1);
  return (
    <details data-fold="editions">
      <summary>Editions{last ? ` (${editions.length})` : ''}</summary>
      {!last && (
        <p>
          No edition was published yet. An edition has its number and date at the foot of every page but the
          cover. It keeps its chart, plan, parts and texts as they were, so that it can be printed again.
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
      <button type="button" aria-disabled={!isFull} onClick={publishNext}>
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

function useChanges(): readonly Change[] {
  const design = useStudio((state) => state.open?.design);
  const chart = useStudio((state) => state.open?.chart);
  return useMemo(() => {
    return design && chart ? changesSinceLast(design, chart) : [];
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
      <div className="row">
        <button type="button" className="plain" onClick={() => writeErratum(number)}>
          Add an erratum…
        </button>
        <button
          type="button"
          className="plain"
          aria-label={`Print it again: edition ${number}`}
          onClick={() => saveEdition(number)}
        >
          Print it again…
        </button>
      </div>
    </li>
  );
}
