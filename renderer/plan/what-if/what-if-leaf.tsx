/** Variants of the hanging side by side, planned in a worker; the one that is liked best becomes the design. */
import { useEffect, useMemo } from 'react';
import { flatten } from '../../../shared/chart/chart.ts';
import { priced } from '../../../shared/materials/priced.ts';
import { tell } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import type { OpenDesign } from '../../store/state.ts';
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { moneyHere } from '../money/money-here.ts';
import { nothingTied } from '../plan-words.ts';
import { alike } from './alike.ts';
import { type Variation, variationOf } from './change.ts';
import { changesWords } from './change-words.ts';
import { CompareTable } from './compare-table.tsx';
import { sizeRows, whatIfRows } from './figure-rows.ts';
import { asItIs, useBesideAsItIs } from './use-beside-as-it-is.ts';
import { weighable } from './use-weighed.ts';
import { VariantCard } from './variant-card.tsx';
import {
  addVariant,
  changeVariant,
  mostVariants,
  startVariants,
  useVariants,
  type Variant,
} from './variants.ts';
import { WeighProgress } from './weigh-progress.tsx';
import './what-if.css';

export function WhatIfLeaf() {
  const open = useStudio((state) => state.open);
  return open ? <WhatIf open={open} /> : null;
}

const letters = ['A', 'B', 'C', 'D'];

function WhatIf({ open: { opening, design, chart } }: { open: OpenDesign }) {
  const { units, currency } = useStudio((state) => state.settings);
  const variants = useVariants();
  // Only the first design of an opening counts: later ones leave the variants as they are.
  useEffect(() => startVariants(opening, design), [opening, design]);
  const varied = useMemo(
    () => variants.map(({ key, changes }) => ({ key, made: variationOf(design, changes) })),
    [design, variants],
  );
  const all = useMemo(
    () =>
      varied.flatMap(({ key, made }) =>
        made.ok ? [weighable(key, moneyHere(made.value.design, currency), flatten(made.value.design))] : [],
      ),
    [varied, currency],
  );
  const here = useMemo(() => moneyHere(design, currency), [design, currency]);
  const weighing = useBesideAsItIs(here, all);
  const sameAs = useMemo(() => alike([weighable(asItIs, design, chart), ...all]), [design, chart, all]);
  const isGaugeVaried = variants.some(isGauged);
  const own = weighing.weighed[asItIs]?.materials;
  const liveMax = own?.totals.liveMax ?? null;
  const missing = own ? priced(own, here, units).cost.missingOfMaterials : [];
  const nameOf = (key: string) =>
    key === asItIs
      ? 'the hanging as it is'
      : `variant ${letters[variants.findIndex((each) => each.key === key)]}`;
  const problemOf = (key: string) => {
    const made = varied.find((each) => each.key === key)?.made;
    return made && !made.ok ? made.problem.sentence : (weighing.problems[key] ?? '');
  };
  const take = (letter: string, { key, changes }: Variant, { edit }: Variation) => {
    if (!edit) return;
    change(`Take ${changesWords(changes, design, units)}`, edit);
    // A yarn that is merged is gone, so the variant can't merge it again.
    changeVariant(
      key,
      changes.filter(({ kind }) => kind !== 'merge'),
    );
    tell(`The hanging is ${letter} now. Undo takes it back.`);
  };
  return (
    <LeafPage
      title="What if"
      about="Ways to make this hanging, side by side. Nothing is changed until you take one."
    >
      {own?.totals.knots === 0 && <p className="quiet">{nothingTied('plan')}</p>}
      <section aria-label="Side by side">
        <WeighProgress weighing={weighing} />
        <CompareTable
          caption="The hanging as it is, and its variants"
          rows={isGaugeVaried ? [...sizeRows, ...whatIfRows] : whatIfRows}
          weighing={{ ...weighing, problems: { ...weighing.problems, ...problemsOf(variants, problemOf) } }}
          columns={[
            { key: asItIs, head: 'As it is' },
            ...varied.map(({ key, made }, i) => ({
              key,
              head: (
                <>
                  <strong>{letters[i]}</strong>
                  <span className="small">{changesWords(variants[i]!.changes, design, units)}</span>
                  {sameAs[key] && variants[i]!.changes.length > 0 && (
                    <span className="small">the same as {nameOf(sameAs[key])}</span>
                  )}
                  {isGauged(variants[i]!) && <span className="small">told, not measured</span>}
                  {made.ok && made.value.edit && !problemOf(key) && (
                    <button type="button" onClick={() => take(letters[i]!, variants[i]!, made.value)}>
                      Take {letters[i]}
                    </button>
                  )}
                </>
              ),
            })),
          ]}
        />
        {missing.length > 0 && (
          <p className="leaf-note">
            The cost leaves out what is not told yet under Materials: {missing.join('; ')}.
          </p>
        )}
      </section>
      <div className="variants">
        {variants.map((variant, i) => (
          <VariantCard
            key={variant.key}
            variant={variant}
            letter={letters[i]!}
            design={design}
            liveMax={liveMax}
            problem={problemOf(variant.key)}
            same={sameAs[variant.key] === undefined ? '' : nameOf(sameAs[variant.key]!)}
          />
        ))}
        {variants.length < mostVariants && (
          <button type="button" className="add-variant" onClick={() => addVariant(design, liveMax)}>
            Add a variant
          </button>
        )}
      </div>
    </LeafPage>
  );
}

function problemsOf(
  variants: readonly { readonly key: string }[],
  problemOf: (key: string) => string,
): Record<string, string> {
  return Object.fromEntries(variants.map(({ key }) => [key, problemOf(key)]));
}

function isGauged({ changes }: Variant): boolean {
  return changes.some(({ kind }) => kind === 'gauge');
}
