/** Our own small drawings of the tools, in strokes of the text's colour. */
import type { ReactNode } from 'react';

function icon(children: ReactNode): ReactNode {
  return (
    <svg
      viewBox="0 0 24 24"
      width="24"
      height="24"
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

export const icons = {
  /** Two turns around a cord. */
  knot: icon(
    <>
      <path d="M12 2v4M12 18v4" />
      <rect x="4" y="6.5" width="16" height="5" rx="2.5" transform="rotate(-5 12 9)" />
      <rect x="4" y="12.5" width="16" height="5" rx="2.5" transform="rotate(-5 12 15)" />
    </>,
  ),
  line: icon(<path d="M4 20 20 4" />),
  rectangle: icon(<rect x="4" y="6" width="16" height="12" />),
  ellipse: icon(<ellipse cx="12" cy="12" rx="9" ry="6.5" />),
  text: icon(<path d="M5 5h14M12 5v14M9 19h6M5 5v3M19 5v3" />),
  /** One ball of yarn in place of another. */
  replace: icon(
    <>
      <circle cx="7" cy="8" r="4" />
      <circle cx="17" cy="16" r="4" fill="currentColor" fillOpacity="0.35" />
      <path d="M13 6h5v4M18 10l1.6-1.6M18 10l-1.6-1.6M11 18H6v-3" />
    </>,
  ),
  patch: icon(<path d="M4 4h16v16H4z" strokeDasharray="3.2 2.4" />),
  /** A small flower of four knots. */
  motif: icon(
    <path d="M12 2.5c3 3.5 3 5.5 0 9.5-3-4-3-6 0-9.5zM12 21.5c3-3.5 3-5.5 0-9.5-3 4-3 6 0 9.5zM2.5 12c3.5-3 5.5-3 9.5 0-4 3-6 3-9.5 0zM21.5 12c-3.5-3-5.5-3-9.5 0 4 3 6 3 9.5 0z" />,
  ),
  border: icon(
    <>
      <path d="M3 8l3-4 3 4 3-4 3 4 3-4 3 4" />
      <path d="M3 20l3-4 3 4 3-4 3 4 3-4 3 4" />
    </>,
  ),
  /** A patch of knots filled up to its edge. */
  fill: icon(
    <>
      <path d="M4 20V11l4-5 4 4 4-3 4 5v8z" fill="currentColor" fillOpacity="0.35" />
      <path d="M4 20h16" />
    </>,
  ),
  /** A turn of yarn pulled off the cord. */
  unpick: icon(
    <>
      <path d="M10 2v20" />
      <path d="M5 9h7c4 0 4 5 8 5" />
      <path d="m17 11 3 3-3 3" />
    </>,
  ),
  /** A ball of yarn beside a cell of its colour. */
  match: icon(
    <>
      <circle cx="9" cy="9" r="6" />
      <path d="M5 7c3 0 6 2 7 6M4 11c3-1 6 0 8 3" />
      <rect x="15.5" y="15.5" width="6" height="6" fill="currentColor" />
    </>,
  ),
  undo: icon(<path d="M9 6 4 11l5 5M4 11h10a6 6 0 0 1 6 6v1" />),
  redo: icon(<path d="m15 6 5 5-5 5M20 11H10a6 6 0 0 0-6 6v1" />),
  symbols: icon(
    <>
      <rect x="3" y="3" width="18" height="18" />
      <path d="M3 12h18M12 3v18M6 9l3-3M15 7.5h3M6.5 16.5h2M15 15l3 3" />
    </>,
  ),
  zoomIn: icon(
    <>
      <circle cx="10.5" cy="10.5" r="6.5" />
      <path d="m15.5 15.5 5 5M10.5 7.5v6M7.5 10.5h6" />
    </>,
  ),
  zoomOut: icon(
    <>
      <circle cx="10.5" cy="10.5" r="6.5" />
      <path d="m15.5 15.5 5 5M7.5 10.5h6" />
    </>,
  ),
  /** The whole hanging under its dowel. */
  zoomFit: icon(
    <>
      <path d="M3 5h18" strokeWidth="3" />
      <path d="M6 5v11h12V5M7 16v4M10.5 16v4M13.5 16v4M17 16v4" />
    </>,
  ),
  /** The knotted part up to the edges of what is in sight. */
  zoomChart: icon(
    <>
      <path d="M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5" />
      <rect x="6.5" y="6.5" width="11" height="11" fill="currentColor" fillOpacity="0.35" />
    </>,
  ),
};
