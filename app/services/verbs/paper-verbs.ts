/** Pictures in, patterns and pictures out. */
import { limits } from '../../../shared/design/limits.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { good, problem } from '../../../shared/result.ts';
import { cancelled } from '../answer.ts';
import type { Call, Handlers } from '../handlers.ts';
import { readImprint } from '../kept/keep-imprint.ts';
import type { Studio } from '../studio.ts';
import { saveTo } from './save-to.ts';
import { takenPictures } from './taken-pictures.ts';

type PaperVerb = Extract<
  keyof Handlers,
  | `picture.${string}`
  | 'reference.take'
  | 'mark.take'
  | 'pattern.save'
  | 'labels.save'
  | 'papers.save'
  | 'png.save'
>;

export function paperVerbs(studio: Studio): Pick<Handlers, PaperVerb> {
  const { makers, now } = studio;
  const taken = takenPictures(studio);
  return {
    'picture.look': async ({ picture }) => {
      const source = await taken.sourceOf(picture);
      return source.ok ? makers.lookAtPicture(source.value) : source;
    },
    'picture.take': ({ name, bytes }) => {
      if (bytes.length > limits.pictureBytes) {
        const most = limits.pictureBytes / 1024 / 1024;
        return problem('too-large', `The picture is larger than ${most} MiB. Save it smaller, or as JPEG.`);
      }
      return good(taken.take(name, bytes));
    },
    'picture.chart': async ({ picture, ...request }, call) => {
      const source = await taken.sourceOf(picture);
      return source.ok ? makers.pictureToChart(source.value, request, call) : source;
    },
    'reference.take': async ({ picture }) => {
      const source = await taken.sourceOf(picture);
      if (!source.ok) return source;
      const made = await makers.referencePicture(source.value);
      return made.ok ? good({ name: taken.nameOf(picture).slice(0, limits.nameChars), ...made.value }) : made;
    },
    'mark.take': async ({ picture }) => {
      const source = await taken.sourceOf(picture);
      if (!source.ok) return source;
      const made = await makers.markPicture(source.value);
      return made.ok ? good({ mediaType: made.value.mediaType, bytes: made.value.bytes }) : made;
    },
    'pattern.save': async ({ text, paper, units, copy, attachDesign = false, target }, call) => {
      const design = readDesign(text);
      if (!design.ok) return design;
      // A target that can't be used is told before the work, not after it.
      const held = await studio.reach(target, 'pattern');
      if (!held.ok) return held;
      const kept = await studio.inTurn('imprint', () => readImprint(studio.files, studio.home.config));
      if (!kept.ok) return kept;
      const made = await makers.makePattern(design.value, {
        paper,
        units,
        imprint: kept.value.imprint,
        attachDesign,
        date: now(),
        ...(copy && { copy }),
        ...call,
      });
      if (!made.ok) return made;
      if (isStopped(call)) return cancelled;
      const { bytes, pages } = made.value;
      const saved = await saveTo(studio, { kind: 'pattern', target, bytes, stamp: null });
      return saved.ok ? good({ fileName: saved.value.fileName, pages, bytes: bytes.length }) : saved;
    },
    'labels.save': async ({ text, paper, units, fitted, target }, call) => {
      const design = readDesign(text);
      if (!design.ok) return design;
      const held = await studio.reach(target, 'pattern');
      if (!held.ok) return held;
      const made = await makers.makeLabels(design.value, { paper, units, fitted, date: now(), ...call });
      if (!made.ok) return made;
      if (isStopped(call)) return cancelled;
      const { bytes, pages, plan } = made.value;
      const saved = await saveTo(studio, { kind: 'pattern', target, bytes, stamp: null });
      return saved.ok ? good({ fileName: saved.value.fileName, pages, bytes: bytes.length, plan }) : saved;
    },
    'papers.save': async ({ text, paper, units, copy, which, target }, call) => {
      const design = readDesign(text);
      if (!design.ok) return design;
      const held = await studio.reach(target, 'pattern');
      if (!held.ok) return held;
      const kept = await studio.inTurn('imprint', () => readImprint(studio.files, studio.home.config));
      if (!kept.ok) return kept;
      const made = await makers.makeHangingPapers(design.value, {
        which,
        paper,
        units,
        imprint: kept.value.imprint,
        date: now(),
        ...(copy && { copy }),
        ...call,
      });
      if (!made.ok) return made;
      if (isStopped(call)) return cancelled;
      const { bytes, pages, notices } = made.value;
      const saved = await saveTo(studio, { kind: 'pattern', target, bytes, stamp: null });
      if (!saved.ok) return saved;
      return good({ fileName: saved.value.fileName, pages, bytes: bytes.length, notices: [...notices] });
    },
    'png.save': async ({ text, target }, call) => {
      const design = readDesign(text);
      if (!design.ok) return design;
      const held = await studio.reach(target, 'png');
      if (!held.ok) return held;
      const bytes = await makers.makeChartPng(design.value);
      if (isStopped(call)) return cancelled;
      const saved = await saveTo(studio, { kind: 'png', target, bytes, stamp: null });
      return saved.ok ? good({ fileName: saved.value.fileName, bytes: bytes.length }) : saved;
    },
  };
}

function isStopped({ signal }: Call): boolean {
  return signal.aborted;
}
