/** What is done with the picture that lies under the chart; each change is one step of the history. */
import type { Design } from '../../../shared/design/design.ts';
import type { Reference } from '../../../shared/design/schema.ts';
import { gaugeOf, sizeOf } from '../../../shared/gauge/gauge.ts';
import { base64Lines } from '../../bridge/base64.ts';
import { fileToOpen } from '../../flows/places.ts';
import { host } from '../../host.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import type { StudioState } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';

/** How much of a new picture shines through. */
const newOpacity = 0.5;

/** The picture as it is shown, with what is being changed; null where none lies under the chart. */
export function shownReference({ open, draft }: StudioState): Reference | null {
  return (draft.reference === undefined ? open?.design.reference : draft.reference) ?? null;
}

/** Shows a change that is not meant yet, such as a slider that is still held. */
export function tryReference(reference: Reference): void {
  studio.setState({ draft: { ...studio.getState().draft, reference } });
}

/** Makes what was tried a step of the history. */
export function keepReference(): void {
  const { open, draft } = studio.getState();
  const { reference, ...rest } = draft;
  if (reference === undefined) return;
  if (open && reference !== open.design.reference)
    change('Reference picture', { kind: 'set', field: 'reference', value: reference });
  studio.setState({ draft: rest });
}

export function setReference(reference: Reference | null): void {
  studio.setState({ draft: { ...studio.getState().draft, reference } });
  keepReference();
}

/** Asks for a picture and lays it under the chart, as large as fits over it. */
export async function chooseReference(): Promise<void> {
  const place = await fileToOpen('picture');
  if (!place) return;
  const taken = await host().call('reference.take', { picture: place.handle });
  if (!taken.ok) return tellProblem(taken.problem.sentence);
  const { open } = studio.getState();
  if (!open) return;
  const { name, mediaType, bytes, widthPx, heightPx } = taken.value;
  setReference({
    name,
    mediaType,
    picture: base64Lines(bytes),
    opacity: open.design.reference?.opacity ?? newOpacity,
    ...fittedOver(open.design, widthPx / heightPx),
    visible: true,
  });
}

/** Where a picture of this width over height lies when it covers the chart as far as its shape allows, in mm. */
export function fittedOver(
  design: Design,
  aspect: number,
): Pick<Reference, 'leftMm' | 'topMm' | 'widthMm' | 'heightMm'> {
  const { widthMm: chartWidth, knottedHeightMm: chartHeight } = sizeOf(design, gaugeOf(design));
  const widthMm = Math.min(chartWidth, chartHeight * aspect);
  const heightMm = widthMm / aspect;
  return { leftMm: (chartWidth - widthMm) / 2, topMm: (chartHeight - heightMm) / 2, widthMm, heightMm };
}
