/** Designs side by side: each figure, and how it differs from the first. Plans are compared with their like. */
import type { ReactNode } from 'react';
import { useStudio } from '../../store/use-studio.ts';
import type { FigureRow } from './figure-rows.ts';
import type { Weighing } from './use-weighed.ts';

interface Compared {
  readonly key: string;
  readonly head: ReactNode;
}

interface CompareTableProps {
  readonly caption: string;
  readonly rows: readonly FigureRow[];
  /** The first is what the others are compared with. */
  readonly columns: readonly Compared[];
  readonly weighing: Weighing;
}

export function CompareTable({ caption, rows, columns, weighing }: CompareTableProps) {
  const units = useStudio((state) => state.settings.units);
  const { weighed, problems, progress } = weighing;
  const first = weighed[columns[0]!.key];
  return (
    <table className="figures side-by-side" aria-busy={progress !== null}>
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <td />
          {columns.map(({ key, head }) => (
            <th scope="col" key={key}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, shown, differs }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {columns.map(({ key }, i) => {
              const one = weighed[key];
              if (problems[key] || !one) return <td key={key}>{problems[key] ? '–' : '…'}</td>;
              const isComparable = first?.effort === one.effort;
              return (
                <td key={key} className={i === 0 ? 'now' : ''}>
                  {shown(one, units)}
                  {i > 0 && (
                    <span className="quiet small">{isComparable ? differs(first, one, units) : '…'}</span>
                  )}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
