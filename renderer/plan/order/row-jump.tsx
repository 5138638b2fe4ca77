/** Goes to a row of the list by its number. */
import { useState } from 'react';
import { OptionalNumberField } from '../../shell/fields.tsx';
import { showRow } from './show-row.ts';

export function RowJump({ rows }: { rows: number }) {
  const [row, setRow] = useState<number | undefined>(undefined);
  return (
    <form
      className="row-jump"
      onSubmit={(event) => {
        event.preventDefault();
        if (row !== undefined) showRow(row);
      }}
    >
      <OptionalNumberField label="Go to row" value={row} min={1} max={rows} whole onChange={setRow} />
      <button type="submit" aria-disabled={row === undefined}>
        Go
      </button>
    </form>
  );
}
