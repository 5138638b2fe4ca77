/**
 * The parcel: everything for selling a pattern, made in one go. Copies for every paper, in colour and in symbols, with cells of
 * both sizes; pictures for the shop; the text of the listing. The strands are planned once for each hand.
 */
import { setImmediate } from 'node:timers/promises';
import type { Design } from '../../../../shared/design/design.ts';
import type { Language } from '../../../../shared/design/pattern-schema.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import type { Imprint } from '../../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { PatternDocument } from '../../../../shared/pattern/page.ts';
import { type CopyForSale, copiesForSale } from '../../../../shared/pattern/parcel/copies-for-sale.ts';
import { listingText } from '../../../../shared/pattern/parcel/listing.ts';
import {
  SHOP_PX_PER_MM,
  type ShopPicture,
  shopPictures,
  shopSizesPx,
} from '../../../../shared/pattern/parcel/shop-pictures.ts';
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

/** Problems: those of the plan; `cancelled`. */
export async function makeParcel(design: Design, options: MakeParcelOptions): Promise<Result<MadeParcel>> {
  const { imprint, languages, bothHands, preparedFor, units, signal, onProgress } = options;
  const language = languages[0]!;
  const title = stemFor(design.title);
  const copies = copiesForSale({ copy: { ...copyOf(design), preparedFor }, languages, bothHands });
  const files: NamedFile[] = [];
  const notices = new Set<string>();
  const jobs = copies.length + pictureCount + languages.length;
  const tell = (name: string) => onProgress?.({ done: files.length / jobs, what: name });
  /** One for each hand. */
  const tied = new Map<boolean, TiedCopy>();
  let shown: PatternDocument | null = null;
  for (const each of copies) {
    const name = `${fileNameOf(title, each, languages)}.pdf`;
    tell(name);
    const before = tied.get(each.copy.leftHanded);
    const made = before ? good(before) : await tieCopy(design, each.copy, signal);
    if (!made) return cancelled;
    if (!made.ok) return made;
    tied.set(each.copy.leftHanded, made.value);
    const document = layOutPattern({ ...made.value, paper: each.paper, units, copy: each.copy, imprint });
    shown ??= document;
    for (const notice of document.notices) notices.add(notice);
    const bytes = await writePatternPdf(document, { date: options.date, ...(signal && { signal }) });
    if (!bytes) return cancelled;
    files.push({ name, bytes });
  }
  const own = tied.get(copies[0]!.copy.leftHanded)!;
  const patterns = files.map(({ name }) => name);
  const { pictures, listing } = parcelWords[language];
  const pages = shopPictures({ ...own, units, language });
  for (const picture of Object.keys(pages) as ShopPicture[]) {
    const name = `${title}, ${pictures[picture]}.png`;
    tell(name);
    await setImmediate();
    if (signal?.aborted) return cancelled;
    files.push({ name, bytes: await drawPng(pages[picture], SHOP_PX_PER_MM) });
  }
  const collage = `${title}, ${pictures.pages}.png`;
  tell(collage);
  files.push({ name: collage, bytes: await drawPagesPicture(shown!) });
  if (signal?.aborted) return cancelled;
  for (const each of languages) {
    const text = listingText({ ...own, units, language: each, files: patterns });
    const name = `${title}, ${parcelWords[each].listing}.txt`;
    files.push({ name, bytes: new TextEncoder().encode(text) });
  }
  onProgress?.({ done: 1, what: listing });
  return good({ name: stemFor(parcelWords[language].parcel(design.title)), files, notices: [...notices] });
}

/** The pictures of the hanging and of its knots, and one of the pages. */
const pictureCount = Object.keys(shopSizesPx).length + 1;

const cancelled = problem('cancelled', 'Nothing was written, because it was cancelled.');

function fileNameOf(title: string, { copy, words }: CopyForSale, languages: readonly Language[]): string {
  return [title, words, ...(languages.length > 1 ? [copy.language] : [])].join(', ');
}
