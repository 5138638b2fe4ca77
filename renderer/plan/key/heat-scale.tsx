import { Fragment } from 'react';
import { heatiest } from '../overlay/draw-live.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { heatSteps } from './heat-steps.ts';

/** The tints of the rows from none to the most that hang, with how many that are. */
export function HeatScale() {
  const most = usePlans((state) => shownPlan(state)?.figures.liveMax ?? 0);
  if (most === 0) return null;
  return (
    <figure className="heat-scale">
      <figcaption>Strands that hang below a row</figcaption>
      <svg
        role="img"
        aria-label={`From none, untinted, to ${most}, the deepest tint`}
        width="200"
        height="34"
      >
        {heatSteps(most).map((count, i, all) => {
          const width = 200 / all.length;
          return (
            <Fragment key={count}>
              <rect
                className="key-heat"
                x={i * width}
                y="0"
                width={width}
                height="16"
                fillOpacity={heatiest * (count / most)}
              />
              <text className="figure" x={(i + 0.5) * width} y="30">
                {count}
              </text>
            </Fragment>
          );
        })}
      </svg>
    </figure>
  );
}
