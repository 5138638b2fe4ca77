/**
 * Measures the faces once, so that pages are laid out alike in the renderer and on paper, and without font files:
 * `npx tsx build/faces/measure.ts` writes shared/pattern/faces/measures.generated.json.
 */
import { type TextFace } from '../../shared/pattern/faces/face-files.ts';
/** Lengths in thousandths of the em. `runs` holds stretches of characters: the first one, then all their advances. */
export interface FaceMeasures {
  ascent: number;
  descent: number;
  capHeight: number;
  runs: number[][];
}
export declare function measureFaces(): Record<TextFace, FaceMeasures>;
export declare function measuresText(): string;
