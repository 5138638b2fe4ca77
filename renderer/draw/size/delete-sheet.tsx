/** Cords or rows to take out: from which to which. */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import type { Way } from '../../../shared/design/size-edits.ts';
import { Choices, NumberField } from '../../shell/fields.tsx';
import { SizeSheet } from './size-sheet.tsx';
import { wayFields } from './way-fields.ts';

export interface Deletion {
  readonly way: Way;
  /** First and last, from 1. */
  readonly first: number;
  readonly last: number;
}

interface DeleteSheetProps {
  readonly design: Design;
  /** The cord and row of the cursor, from 1. */
  readonly cord: number;
  readonly row: number;
  readonly answer: (deletion: Deletion) => void;
}

export function DeleteSheet({ design, cord, row, answer }: DeleteSheetProps) {
  const [wanted, setWanted] = useState<Deletion>({ way: 'cords', first: cord, last: cord });
  const want = (change: Partial<Deletion>) => setWanted((before) => ({ ...before, ...change }));
  const { way, first, last } = wanted;
  const { one, many, countKey } = wayFields[way];
  const size = { columns: design.columns, rows: design.rows };
  const count = last - first + 1;
  const fault =
    count < 1
      ? `The last ${one} comes before the first. Turn them round.`
      : count === size[countKey]
        ? `That is all of them. A hanging needs at least one ${one}.`
        : '';
  return (
    <SizeSheet
      title="Delete cords and rows"
      design={design}
      size={{ ...size, [countKey]: size[countKey] - count }}
      fault={fault}
      note={
        way === 'rows' && count % 2 === 1 && last < size.rows
          ? 'The rows below are then tied the other way round. Two rows at a time keep their direction.'
          : ''
      }
      deed={fault ? 'Delete' : `Delete ${count} ${count === 1 ? one : many}`}
      done={() => answer(wanted)}
    >
      <Choices
        label="Delete"
        value={way}
        options={[
          { value: 'cords', label: 'cords' },
          { value: 'rows', label: 'rows' },
        ]}
        onChange={(next) => {
          const at = next === 'cords' ? cord : row;
          want({ way: next, first: at, last: at });
        }}
      />
      {/* Another way counts up to another number. */}
      <NumberField
        key={`${way} first`}
        label={`From ${one}`}
        value={first}
        min={1}
        max={size[countKey]}
        whole
        first
        onChange={(next) => want({ first: next })}
      />
      <NumberField
        key={`${way} last`}
        label={`To ${one}`}
        value={last}
        min={1}
        max={size[countKey]}
        whole
        onChange={(next) => want({ last: next })}
      />
    </SizeSheet>
  );
}
