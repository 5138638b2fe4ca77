/**
 * Plan: what the hanging takes and how it is tied, before the first knot. The maker's settings at the left, the hanging
 * with its strands in the middle, figures and what is chosen at the right; below, where the chart or the order of tying is
 * shown, the place in that order. What else there is to plan gets a part of its own in one of the two columns.
 */
import { type ReactNode, useEffect } from 'react';
import { SidePart } from '../draw/side-part.tsx';
import { handleCommands } from '../shell/command-bus.ts';
import { useStudio } from '../store/use-studio.ts';
import { BundlesLeaf } from './bundles/bundles-leaf.tsx';
import { Column } from './columns/column.tsx';
import { followWidth } from './columns/folds.ts';
import { LeafChoice } from './leaves/leaf-choice.tsx';
import { followsOrder, type Leaf, useLeaf } from './leaves/leaves.ts';
import { MaterialsLeaf } from './money/materials-leaf.tsx';
import { OrderLeaf } from './order/order-leaf.tsx';
import { OrderBar } from './panels/order-bar.tsx';
import { TakesPart } from './panels/takes-part.tsx';
import { TyingPart } from './panels/tying-part.tsx';
import { ViewPart } from './panels/view-part.tsx';
import { YarnsPart } from './panels/yarns-part.tsx';
import { PinsPart } from './pins/pins-part.tsx';
import { PlanChart } from './plan-chart.tsx';
import { planCommands } from './plan-commands.ts';
import { keepPlans } from './plans/keep-plans.ts';
import { SizesLeaf } from './sizes/sizes-leaf.tsx';
import { StepsPart } from './steps/steps-part.tsx';
import { SwatchesLeaf } from './swatches/swatches-leaf.tsx';
import { WhatIfLeaf } from './what-if/what-if-leaf.tsx';
import './plan.css';

const leaves: Readonly<Record<Exclude<Leaf, 'chart'>, ReactNode>> = {
  order: <OrderLeaf />,
  swatches: <SwatchesLeaf />,
  bundles: <BundlesLeaf />,
  materials: <MaterialsLeaf />,
  sizes: <SizesLeaf />,
  'what-if': <WhatIfLeaf />,
};

export function PlanScreen() {
  const opening = useStudio((state) => state.open?.opening);
  const leaf = useLeaf();
  useEffect(() => {
    if (!opening) return;
    const planner = keepPlans();
    const forgetWidth = followWidth();
    const forget = handleCommands(planCommands(planner));
    return () => {
      forget();
      forgetWidth();
      planner.forget();
    };
  }, [opening]);
  if (!opening) return null;
  return (
    <div className="plan">
      <button type="button" className="skip" onClick={goToMiddle}>
        {leaf === 'chart' ? 'To the chart' : 'To the middle'}
      </button>
      <Column side="settings" name="How you tie">
        <SidePart title="How you tie">
          <TyingPart />
        </SidePart>
      </Column>
      <div className="plan-middle">
        <LeafChoice />
        {leaf === 'chart' ? <PlanChart key={opening} /> : leaves[leaf]}
      </div>
      <Column side="figures" name="Strands and figures">
        {leaf === 'chart' && (
          <>
            <ViewPart />
            <PinsPart />
            <StepsPart />
          </>
        )}
        <SidePart title="What it takes">
          <TakesPart />
        </SidePart>
        <SidePart title="Yarns">
          <YarnsPart />
        </SidePart>
      </Column>
      {followsOrder(leaf) && <OrderBar />}
    </div>
  );
}

/** To the chart, or to the leaf that lies in its place. */
function goToMiddle(): void {
  document.querySelector<HTMLElement>('.plan-middle .room, .plan-middle .plan-leaf')?.focus();
}
