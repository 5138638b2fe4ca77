/** Cords or rows to put in: how many, and beside which. */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Way } from '../../../shared/design/size-edits.ts';
import { Choices, NumberField } from '../../shell/fields.tsx';
import { SizeSheet } from './size-sheet.tsx';
import { wayFields } from './way-fields.ts';

export interface Insertion {
  readonly way: Way;
  /** The cord or row that they stand beside, from 1. */
  readonly beside: number;
  readonly side: 'before' | 'after';
  readonly count: number;
}

interface InsertSheetProps {
  readonly design: Design;
  /** The cord and row of the cursor, from 1. */
  readonly cord: number;
  readonly row: number;
  readonly answer: (insertion: Insertion) => void;
}

export function InsertSheet({ design, cord, row, answer }: InsertSheetProps) {
  const [wanted, setWanted] = useState<Insertion>({ way: 'cords', beside: cord, side: 'after', count: 1 });
  const want = (change: Partial<Insertion>) => setWanted((before) => ({ ...before, ...change }));
  const { way, beside, side, count } = wanted;
  const { one, many, before, after, countKey } = wayFields[way];
  const size = { columns: design.columns, rows: design.rows };
  return (
    <SizeSheet
      title="Insert cords and rows"
      design={design}
      size={{ ...size, [countKey]: size[countKey] + count }}
      note={
        way === 'rows' && count % 2 === 1
          ? 'The rows below are then tied the other way round. Two rows at a time keep their direction.'
          : ''
      }
      deed="Insert"
      done={() => answer(wanted)}
    >
      <Choices
        label="Insert"
        value={way}
        options={[
          { value: 'cords', label: 'cords' },
          { value: 'rows', label: 'rows' },
        ]}
        onChange={(next) => want({ way: next, beside: next === 'cords' ? cord : row })}
      />
      <NumberField
        label={`How many ${many}`}
        value={count}
        min={1}
        max={limits[countKey]}
        whole
        first
        onChange={(next) => want({ count: next })}
      />
      {/* Another way counts up to another number. */}
      <NumberField
        key={way}
        label={`Beside ${one}`}
        value={beside}
        min={1}
        max={size[countKey]}
        whole
        onChange={(next) => want({ beside: next })}
      />
      <Choices
        label="On which side"
        value={side}
        options={[
          { value: 'before', label: before },
          { value: 'after', label: after },
        ]}
        onChange={(next) => want({ side: next })}
      />
    </SizeSheet>
  );
}
