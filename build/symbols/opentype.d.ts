/** The part of opentype.js that builds a font; the package comes without types of its own. */
declare module 'opentype.js' {
  export class Path {
    moveTo(x: number, y: number): void;
    lineTo(x: number, y: number): void;
    curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
    close(): void;
  }

  export class Glyph {
    constructor(options: { name: string; unicode?: number; advanceWidth: number; path: Path });
  }

  export class Font {
    constructor(options: {
      familyName: string;
      styleName: string;
      unitsPerEm: number;
      ascender: number;
      descender: number;
      createdTimestamp: number;
      designer: string;
      license: string;
      version: string;
      description: string;
      glyphs: Glyph[];
    });
    toArrayBuffer(): ArrayBuffer;
  }

  /** In Node the package is one CommonJS object. */
  const all: { Font: typeof Font; Glyph: typeof Glyph; Path: typeof Path };
  export default all;
}
