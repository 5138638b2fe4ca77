/** Our own small drawings for the layers' panel, in strokes of the text's colour. */
import type { ReactNode } from 'react';

function icon(children: ReactNode): ReactNode {
  return (
    <svg
      viewBox="0 0 20 20"
      width="18"
      height="18"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

const eye = <path d="M2 10c2.2-3.6 4.9-5.4 8-5.4s5.8 1.8 8 5.4c-2.2 3.6-4.9 5.4-8 5.4S4.2 13.6 2 10z" />;

export const layerIcons = {
  shown: icon(
    <>
      {eye}
      <circle cx="10" cy="10" r="2.4" fill="currentColor" />
    </>,
  ),
  hidden: icon(
    <>
      <g opacity="0.55">{eye}</g>
      <path d="M4 17 16 3" />
    </>,
  ),
  locked: icon(
    <>
      <rect x="4.5" y="9" width="11" height="8" rx="1.5" fill="currentColor" fillOpacity="0.35" />
      <path d="M7 9V6.5a3 3 0 0 1 6 0V9" />
    </>,
  ),
  unlocked: icon(
    <g opacity="0.6">
      <rect x="4.5" y="9" width="11" height="8" rx="1.5" />
      <path d="M7 9V5.5a3 3 0 0 1 5.8-1" />
    </g>,
  ),
  add: icon(<path d="M10 4v12M4 10h12" />),
  /** A sheet, and the same again over it. */
  duplicate: icon(
    <>
      <path d="M13 4H5a1 1 0 0 0-1 1v8" />
      <rect x="7" y="7" width="9" height="9" rx="1" fill="currentColor" fillOpacity="0.35" />
    </>,
  ),
  /** Pressed onto the sheet below. */
  merge: icon(<path d="M10 3v8M6.5 8 10 11.5 13.5 8M3 16h14M3 13v3M17 13v3" />),
  remove: icon(<path d="M4 6h12M8 6V4h4v2M5.5 6l.8 10.5h7.4L14.5 6M8.4 9v5M11.6 9v5" />),
  up: icon(<path d="M10 16V4M5.5 8.5 10 4l4.5 4.5" />),
  down: icon(<path d="M10 4v12M5.5 11.5 10 16l4.5-4.5" />),
  /** One sheet clear, the one behind it faint. */
  fade: icon(
    <>
      <rect x="8" y="3.5" width="9" height="9" rx="1" strokeDasharray="1.5 2.2" />
      <rect x="3" y="8" width="9" height="9" rx="1" fill="currentColor" fillOpacity="0.5" />
    </>,
  ),
};
