/** The sheets that patterns are printed on, upright, in mm. */
export const papers = {
  /** ISO 216. */
  a4: { name: 'A4', widthMm: 210, heightMm: 297 },
  /** ANSI/ASME Y14.1: 8.5 x 11 in. */
  letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
} as const;

export type Paper = keyof typeof papers;

export interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Nothing is printed nearer to the sheet's edges than this. Home printers can't reach the last 5 mm or so. */
export const margins = { left: 16, right: 16, top: 15, bottom: 12 } as const;

/** The foot of each page: a thin rule and two lines of text. */
export const FOOT_MM = 10;

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a page's own matter stands: within the margins, above the foot. */
export function bodyOf({ widthMm, heightMm }: Sheet): Area {
  return {
    x: margins.left,
    y: margins.top,
    width: widthMm - margins.left - margins.right,
    height: heightMm - margins.top - margins.bottom - FOOT_MM,
  };
}

export function turned({ widthMm, heightMm }: Sheet): Sheet {
  return { widthMm: heightMm, heightMm: widthMm };
}
