/**
 * What the chart says of itself in words: the row under the cursor, read as runs. It describes the chart for whoever
 * asks for a description, and is not read aloud at every step; 'Read this row' reads it aloud.
 */
import { useEffect, useState } from 'react';
import { handleCommands } from '../../shell/command-bus.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { rowsInWords } from './row-words.ts';

export function RowUnder({ id }: { id: string }) {
  const chart = useStudio((state) => state.open?.chart);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const row = useStudio((state) => state.under?.row ?? 0);
  const [read, setRead] = useState('');
  useEffect(
    () =>
      handleCommands({
        'read-row': () => setRead((before) => aloud(rowNow(), before)),
      }),
    [],
  );
  return (
    <>
      <p id={id} className="unseen">
        {chart && yarns ? rowsInWords(chart, yarns, row, 1) : ''}
      </p>
      <p className="unseen" aria-live="polite">
        {read}
      </p>
    </>
  );
}

function rowNow(): string {
  const { open, under } = studio.getState();
  return open ? rowsInWords(open.chart, open.design.yarns, under?.row ?? 0, 1).join('') : '';
}

/** The same words a second time would not be read: a space that nobody sees makes them other ones. */
function aloud(words: string, before: string): string {
  return words === before ? `${words}\u00a0` : words;
}
