/** The maker's own photograph for the cover, scaled by the host to what a design carries. */
import { base64Lines } from '../../bridge/base64.ts';
import { fileToOpen } from '../../flows/places.ts';
import { host } from '../../host.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { setCover } from '../pattern-deeds.ts';

export async function choosePhotograph(): Promise<void> {
  const place = await fileToOpen('picture');
  if (!place) return;
  const taken = await host().call('reference.take', { picture: place.handle });
  if (!taken.ok) return tellProblem(taken.problem.sentence);
  const { mediaType, bytes, widthPx, heightPx } = taken.value;
  setCover({ mediaType, widthPx, heightPx, picture: base64Lines(bytes) });
}
