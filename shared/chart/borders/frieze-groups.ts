/**
 * The seven frieze groups: every way in which a band can repeat along itself. The symbols are those of *International
 * Tables for Crystallography*, volume E; the signatures are the orbifold notation of mathematics.
 *
 * Each is laid from images of one motif: as it is drawn (I), mirrored left and right (V), mirrored top and bottom (H),
 * or turned by a half (R). `images` is one period: lines of images from the outside of the band to its inside. It
 * begins so that its ends and its middle are the best places for the middle of an edge: mirrors across the band where
 * the group has them, else half turns.
 */
export type FriezeGroup = 'p1' | 'p11g' | 'p1m1' | 'p211' | 'p2mg' | 'p11m' | 'p2mm';

/** How an image of the motif lies: as drawn, mirrored left and right (V), top and bottom (H), or half turned (R). */
export type MotifImage = 'I' | 'V' | 'H' | 'R';

export interface FriezeGroupInfo {
  readonly group: FriezeGroup;
  /** The orbifold signature. */
  readonly signature: string;
  readonly label: string;
  /** What happens to the motif from one image to the next, in one sentence. */
  readonly hint: string;
  readonly images: readonly (readonly MotifImage[])[];
}

export const friezeGroups: readonly FriezeGroupInfo[] = [
  {
    group: 'p1',
    signature: '∞∞',
    label: 'Translation',
    hint: 'The motif follows itself.',
    images: [['I']],
  },
  {
    group: 'p11g',
    signature: '∞×',
    label: 'Glide',
    hint: 'Every other motif is mirrored top and bottom.',
    images: [['I', 'H']],
  },
  {
    group: 'p1m1',
    signature: '*∞∞',
    label: 'Mirrors across',
    hint: 'Every other motif is mirrored left and right.',
    images: [['I', 'V']],
  },
  {
    group: 'p211',
    signature: '22∞',
    label: 'Half turns',
    hint: 'Every other motif is turned by a half.',
    images: [['I', 'R']],
  },
  {
    group: 'p2mg',
    signature: '2*∞',
    label: 'Mirrors across and half turns',
    hint: 'The motif is mirrored, then turned by a half, and so on in turn.',
    images: [['R', 'I', 'V', 'H']],
  },
  {
    group: 'p11m',
    signature: '∞*',
    label: 'Mirror along',
    hint: 'The motif follows itself, with its mirror image on the inside.',
    images: [['I'], ['H']],
  },
  {
    group: 'p2mm',
    signature: '*22∞',
    label: 'Mirrors across and along',
    hint: 'Every other motif is mirrored left and right, with mirror images on the inside.',
    images: [
      ['I', 'V'],
      ['H', 'R'],
    ],
  },
];
