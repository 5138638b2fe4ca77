/** What to buy and what it costs: yarn by yarn, cord, dowel, hours, prices with their formulas, and the mass. */
import { useEffect, useMemo } from 'react';
import { priced } from '../../../shared/materials/priced.ts';
import { withStash } from '../../../shared/materials/with-stash.ts';
import { emptyStash } from '../../../shared/yarn/stash.ts';
import { readStash, useStash } from '../../draw/yarns/stash/stash-store.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { CordAndDowel } from './cord-and-dowel.tsx';
import { Hours } from './hours.tsx';
import { moneyHere } from './money-here.ts';
import { Price } from './price.tsx';
import { YarnTable } from './yarn-table.tsx';
import './money.css';

export function MaterialsLeaf() {
  const planned = usePlans(shownPlan);
  const problem = usePlans((state) => state.problem);
  const design = useStudio((state) => state.open?.design);
  const { units, currency } = useStudio((state) => state.settings);
  const stash = useStash();
  useEffect(() => {
    readStash().then((notice) => notice && tellProblem(notice));
  }, []);
  const materials = useMemo(() => {
    if (!planned || !design) return null;
    const here = withStash(moneyHere(design, currency), stash ?? emptyStash);
    return priced(planned.materials, here, units);
  }, [planned, design, stash, units, currency]);
  return (
    <LeafPage
      title="Materials"
      about="What to buy, what it costs and how long it takes. Each length is rounded up for itself, so lines may add up to a little more than what stands below them."
    >
      {problem && <p className="fault">{problem}</p>}
      {!problem && (!materials || !design) && <p className="quiet">Planning…</p>}
      {!problem && materials && design && (
        <>
          <YarnTable {...{ materials, design, stash: stash ?? emptyStash }} />
          <CordAndDowel {...{ materials, design }} />
          <Hours {...{ materials, design }} />
          <Price {...{ materials, design }} />
        </>
      )}
    </LeafPage>
  );
}
