/**
 * Which pieces to cut before the first knot: by yarn and length, numbered in the order of use, to be ticked off, with
 * labels to print for them.
 */
import { useEffect, useMemo } from 'react';
import type { Bundles } from '../../../shared/materials/bundles/bundles.ts';
import { cutListHash } from '../../../shared/materials/bundles/cut-list-hash.ts';
import { cutSoFar } from '../../../shared/materials/bundles/cut-so-far.ts';
import { usualFitting } from '../../../shared/materials/bundles/fitted-plan.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatCutLength } from '../../../shared/units/cut-length.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import type { Units } from '../../../shared/units/units.ts';
import { saveLabels } from '../../flows/exporting.ts';
import { set } from '../../settings/settings.tsx';
import { Choices } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { nothingTied } from '../plan-words.ts';
import { type Plans, plans, usePlans } from '../plans/plans.ts';
import { chooseFitted, forgetLabels, forgetSpare, keepLabelled } from './bundle-deeds.ts';
import { bundlesWords, labelsWords, savingWords, spareWords } from './bundle-words.ts';
import { RunningOut } from './running-out.tsx';
import { type CutBundle, YarnBundles } from './yarn-bundles.tsx';
import './bundles.css';

export function BundlesLeaf() {
  const told = usePlans((state) => state.bundles);
  const problem = usePlans((state) => state.problem);
  useEffect(() => {
    plans.setState({ wantsBundles: true });
    return () => plans.setState({ wantsBundles: false });
  }, []);
  return (
    <LeafPage
      title="Bundles"
      about="What to cut before the first knot. Tie the pieces of one yarn and one length into a bundle; the numbers count a yarn’s pieces in the order in which the steps attach them."
    >
      {problem && <p className="fault">{problem}</p>}
      {!problem && !told && <p className="quiet">Planning…</p>}
      {!problem && told && told.whole.pieces === 0 && <p className="quiet">{nothingTied('cut')}</p>}
      {!problem && told && told.whole.pieces > 0 && <CutList {...told} />}
    </LeafPage>
  );
}

function CutList({ effort, whole, fitted }: NonNullable<Plans['bundles']>) {
  const { units, paper } = useStudio((state) => state.settings);
  const workingMm = useStudio((state) => state.open?.design.tying.workingLengthMm ?? 0);
  const isFull = effort === 'full';
  const design = useStudio((state) => state.open?.design);
  const isFitted = design?.bundles?.fitted ?? false;
  const labelled = design?.bundles?.labelled;
  const shown = isFitted ? fitted : whole;
  const hash = useMemo(() => cutListHash(shown), [shown]);
  const soFar = cutSoFar(shown.bundles, design?.bundles?.cut ?? []);
  const step = stepWords(usualFitting.roundUpMm, units);
  return (
    <>
      <div className="bundle-choices">
        <Choices
          label="Cut each piece"
          value={isFitted ? 'fitted' : 'whole'}
          options={[
            {
              value: 'whole',
              label: `at the working length, ${formatCutLength(workingMm, units)}`,
            },
            {
              value: 'fitted',
              label: `to measure: with ${formatPercent(usualFitting.reserve)} to spare as far as the working length allows, up to the next ${step}`,
            },
          ]}
          onChange={(value) => chooseFitted(value === 'fitted')}
        />
        <p role="status">
          <strong>{bundlesWords(shown, units)}</strong> {savingWords(fitted, units)}
        </p>
      </div>
      <RunningOut />
      <Ticked cut={soFar.pieces} of={shown.pieces} />
      {!isFull && (
        <p className="quiet small">
          This is a quick plan. Bundles are ticked and labels printed by the full one, which may take a few
          pieces less.
        </p>
      )}
      {isFull && soFar.spare.length > 0 && (
        <div className="spare-pieces">
          <p>{spareWords(soFar.spare, design?.yarns ?? [], units)}</p>
          <button type="button" onClick={() => forgetSpare(soFar.spare)}>
            Forget them
          </button>
        </div>
      )}
      {byYarn(shown, soFar.counts).map((bundles) => (
        <YarnBundles key={bundles[0]!.bundle.yarn} bundles={bundles} mayTick={isFull} />
      ))}
      <section className="labels-room" aria-label="Labels">
        <h3>Labels to hang on the bundles</h3>
        <Choices
          label="Paper"
          value={paper}
          options={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
          onChange={(next) => set({ paper: next })}
        />
        {isFull && labelled && (
          <p role="status" className={labelled === hash ? 'quiet small' : 'stale-labels'}>
            {labelsWords(labelled === hash)}
          </p>
        )}
        {isFull && labelled === hash && design?.bundles?.plan && (
          <div className="spare-pieces">
            <p>The plan that they are of stays in use, also where a later Larkrow would plan otherwise.</p>
            <button type="button" onClick={forgetLabels}>
              Plan anew
            </button>
          </div>
        )}
        <button
          type="button"
          className="main"
          aria-disabled={!isFull}
          onClick={async () => {
            const plan = isFull ? await saveLabels(isFitted) : null;
            if (plan) keepLabelled(hash, plan);
          }}
        >
          Print labels…
        </button>
      </section>
    </>
  );
}

/** Steps are whole centimetres, which are no round number of inches. */
function stepWords(mm: number, units: Units): string {
  return units === 'us' ? `${formatLength(mm, units)} or so` : formatLength(mm, units);
}

function Ticked({ cut, of }: { cut: number; of: number }) {
  return (
    <div className="bundles-cut">
      <span role="status">{`Cut: ${cut.toLocaleString('en')} of ${counted(of, 'piece')}`}</span>
      <progress value={cut} max={of} aria-label="Pieces that are cut" />
    </div>
  );
}

/** `cut`: pieces that are cut of each bundle. */
function byYarn({ bundles }: Bundles, cut: readonly number[]): CutBundle[][] {
  const yarns: CutBundle[][] = [];
  for (const [i, bundle] of bundles.entries()) {
    const each = { bundle, cut: cut[i]! };
    const last = yarns.at(-1);
    if (last?.[0]?.bundle.yarn === bundle.yarn) last.push(each);
    else yarns.push([each]);
  }
  return yarns;
}
