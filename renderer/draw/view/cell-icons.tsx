/** Our own small drawings of the ways in which a cell is shown. */
import type { ReactNode } from 'react';
import type { CellView } from '../../store/views.ts';

function icon(children: ReactNode): ReactNode {
  return (
    <svg
      viewBox="0 0 24 24"
      width="20"
      height="20"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.8"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

export const cellIcons: Record<CellView, ReactNode> = {
  knots: icon(
    <>
      <rect x="3" y="5.5" width="18" height="5.5" rx="2.7" transform="rotate(-5 12 8)" />
      <rect x="3" y="12.5" width="18" height="5.5" rx="2.7" transform="rotate(-5 12 15)" />
    </>,
  ),
  flat: icon(<path d="M4 4h16v16H4zM12 4v16M4 12h16" />),
  symbols: icon(<path d="M4 4h16v16H4zM8 14l4-5 4 5M8 16.5h8" />),
};
