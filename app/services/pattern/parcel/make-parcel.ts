/**
 * The parcel: everything for selling a pattern, made in one go. Copies for every paper, in colour and in symbols, with cells of
 * both sizes; pictures for the shop; the text of the listing. What is in another language or for the other hand is a pack by itself,
 * in a folder of its own.
 */
import { setImmediate } from 'node:timers/promises';
import type { Design } from '../../../../shared/design/design.ts';
import type { Language } from '../../../../shared/design/pattern-schema.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import type { PatternText } from '../../../../shared/pattern/editions/changes-since.ts';
import { inQuotes } from '../../../../shared/pattern/flow/in-quotes.ts';
import type { Imprint } from '../../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { noPages } from '../../../../shared/pattern/no-pages.ts';
import type { PatternDocument } from '../../../../shared/pattern/page/page.ts';
import { listingText } from '../../../../shared/pattern/parcel/listing.ts';
import { type Pack, packsForSale } from '../../../../shared/pattern/parcel/packs-for-sale.ts';
import {
  SHOP_PX_PER_MM,
  type ShopPicture,
  shopPictures,
  shopSizesPx,
} from '../../../../shared/pattern/parcel/shop-pictures.ts';
import { staleTexts } from '../../../../shared/pattern/stale-texts.ts';
import { patternTexts } from '../../../../shared/pattern/words/edition-words.ts';
import { parcelWords } from '../../../../shared/pattern/words/parcel-words.ts';
import { good, problem, type Result } from '../../../../shared/result.ts';
import { stemFor } from '../../names/file-name.ts';
import { writePatternPdf } from '../draw-pdf.ts';
import { drawPng } from '../draw-png.ts';
import type { MakePatternOptions } from '../make-pattern.ts';
import { type TiedCopy, tieCopy } from '../tie-copy.ts';
import { drawPagesPicture } from './pages-picture.ts';
import type { NamedFile } from './zip.ts';

export interface MakeParcelOptions extends Omit<MakePatternOptions, 'paper'> {
  readonly imprint: Imprint;
  readonly languages: readonly Language[];
  /** Besides the design's own hand the other one too. */
  readonly bothHands: boolean;
  /** Stands on every page; empty: nobody is named. */
  readonly preparedFor: string;
}

export interface MadeParcel {
  /** Of the folder that holds it: no ending, safe on every platform. */
  readonly name: string;
  readonly files: readonly NamedFile[];
  readonly notices: readonly string[];
}

/** Problems: those of the plan; `no-pages`; `cancelled`. */
export async function makeParcel(design: Design, options: MakeParcelOptions): Promise<Result<MadeParcel>> {
  const { languages, bothHands, preparedFor, signal, onProgress } = options;
  const packs = packsForSale({ copy: { ...copyOf(design), preparedFor }, languages, bothHands });
  const parcel = newParcel(stemFor(design.title), {
    ...options,
    jobs: packs.reduce((sum, { copies }) => sum + copies.length + pictureCount + 1, 0),
  });
  for (const leftHanded of new Set(packs.map((pack) => pack.leftHanded))) {
    // Language and paper change nothing of the strands' ways: they are planned once for each hand.
    parcel.plans();
    const tied = await tieCopy(design, { ...copyOf(design), leftHanded }, signal);
    if (!tied) return cancelled;
    if (!tied.ok) return tied;
    for (const pack of packs.filter((each) => each.leftHanded === leftHanded)) {
      const packed = await packUp(parcel, pack, tied.value);
      if (!packed.ok) return packed;
    }
  }
  onProgress?.({ done: 1, what: parcelWords[languages[0]!].listing });
  const name = stemFor(parcelWords[languages[0]!].parcel(design.title));
  return good({ name, files: parcel.files, notices: [...parcel.notices, ...ownTexts(design, languages)] });
}

interface Parcel extends Pick<MakeParcelOptions, 'units' | 'imprint' | 'date' | 'signal'> {
  /** Safe in names of files. */
  readonly title: string;
  readonly files: NamedFile[];
  readonly notices: Set<string>;
  /** Of the hanging: the same for both hands. */
  readonly pictures: Map<Language, NamedFile[]>;
  /** Tells that the strands are planned before the next file is made. */
  plans(): void;
  /** Tells how much of the file that was begun last is made, from 0 to 1. */
  goesOn(share: number): void;
  /** Tells the progress before a file is made; false: nobody wants it any more. */
  begin(name: string): Promise<boolean>;
}

function newParcel(title: string, options: MakeParcelOptions & { jobs: number }): Parcel {
  const { units, imprint, date, signal, onProgress, jobs } = options;
  const files: NamedFile[] = [];
  /** How many files were begun, and the last of them. */
  let begun = 0;
  let last = '';
  return {
    ...{ units, imprint, date, title, files, notices: new Set(), pictures: new Map() },
    ...(signal && { signal }),
    plans: () => onProgress?.({ done: Math.max(begun, files.length) / jobs, what: 'Planning the strands' }),
    goesOn: (share) => onProgress?.({ done: (begun - 1 + share) / jobs, what: last }),
    async begin(name) {
      // Those that are taken over from another pack are not begun again.
      begun = Math.max(begun, files.length) + 1;
      last = `File ${begun} of ${jobs}: ${name}`;
      onProgress?.({ done: (begun - 1) / jobs, what: last });
      await setImmediate();
      return !signal?.aborted;
    },
  };
}

/** Copies, pictures and the listing of one pack. Problems: `no-pages`; `cancelled`. */
async function packUp(parcel: Parcel, pack: Pack, tied: TiedCopy): Promise<Result<null>> {
  const { title, units, imprint, date, signal, files, notices } = parcel;
  const { language, folder, copies } = pack;
  const { pictures, listing } = parcelWords[language];
  const put = (name: string, bytes: Uint8Array) =>
    files.push({ name: folder ? `${folder}/${name}` : name, bytes });
  let first: PatternDocument | null = null;
  const patterns = copies.map(({ words }) => `${title}, ${words}.pdf`);
  for (const [i, { copy, paper }] of copies.entries()) {
    if (!(await parcel.begin(patterns[i]!))) return cancelled;
    const document = layOutPattern({ ...tied, paper, units, copy, imprint });
    if (document.pages.length === 0) return noPages;
    first ??= document;
    for (const notice of document.notices) notices.add(notice);
    const bytes = await writePatternPdf(document, {
      date,
      onProgress: ({ done }) => parcel.goesOn(done),
      ...(signal && { signal }),
    });
    if (!bytes) return cancelled;
    put(patterns[i]!, bytes);
  }
  const shown = await picturesOf(parcel, pack, tied);
  if (!shown) return cancelled;
  for (const { name, bytes } of shown) put(name, bytes);
  const collage = `${title}, ${pictures.pages}.png`;
  if (!(await parcel.begin(collage))) return cancelled;
  put(collage, await drawPagesPicture(first!));
  // What a designer wrote for one hand or one language may be wrong for the other.
  for (const { text: name, says, now } of staleTexts({ ...tied, units, copy: copies[0]!.copy })) {
    notices.add(
      `${folder === '' ? 'In the copies' : `In “${folder}”`}: ${patternTexts.en[name]} says ${inQuotes(says)}, where these copies have ${inQuotes(now)}.`,
    );
  }
  const text = listingText({ ...tied, units, language, files: patterns });
  put(`${title}, ${listing}.txt`, new TextEncoder().encode(text));
  return good(null);
}

async function picturesOf(parcel: Parcel, { language }: Pack, tied: TiedCopy): Promise<NamedFile[] | null> {
  const before = parcel.pictures.get(language);
  if (before) return before;
  const pages = shopPictures({ ...tied, units: parcel.units, language });
  const drawn: NamedFile[] = [];
  for (const picture of Object.keys(pages) as ShopPicture[]) {
    const name = `${parcel.title}, ${parcelWords[language].pictures[picture]}.png`;
    if (!(await parcel.begin(name))) return null;
    drawn.push({ name, bytes: await drawPng(pages[picture], SHOP_PX_PER_MM) });
  }
  parcel.pictures.set(language, drawn);
  return drawn;
}

/** The pictures of the hanging and of its knots, and one of the pages. */
const pictureCount = Object.keys(shopSizesPx).length + 1;

/** The designer's own texts are not translated, so they are told of where there is more than one language. */
function ownTexts({ pattern }: Design, languages: readonly Language[]): string[] {
  const texts = Object.entries(pattern?.texts ?? {}) as [PatternText, string][];
  const own = texts.filter(([, text]) => text !== '');
  if (languages.length < 2 || own.length === 0) return [];
  const names = own.map(([name]) => lowerFirst(patternTexts.en[name])).join(', ');
  return [`Texts of your own stand in all languages as you wrote them: ${names}.`];
}

function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

const cancelled = problem('cancelled', 'Nothing was written, because it was cancelled.');
