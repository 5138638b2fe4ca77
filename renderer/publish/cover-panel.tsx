/** What the cover shows: the hanging as it is drawn, or the maker's own photograph. */
import { base64Lines } from '../bridge/base64.ts';
import { fileToOpen } from '../flows/places.ts';
import { host } from '../host.ts';
import { tellProblem } from '../shell/notices.tsx';
import { useStudio } from '../store/use-studio.ts';
import { setCover } from './pattern-deeds.ts';

export function CoverPanel() {
  const cover = useStudio((state) => state.open?.design.pattern?.cover);
  return (
    <details>
      <summary>Cover</summary>
      <p>
        {cover ? 'The cover shows your photograph.' : 'The cover shows the finished hanging as it is drawn.'}
      </p>
      <div className="choices">
        <button type="button" onClick={choosePhotograph}>
          {cover ? 'Another photograph…' : 'A photograph of yours…'}
        </button>
        {cover && (
          <button type="button" onClick={() => setCover(undefined)}>
            The drawn hanging
          </button>
        )}
      </div>
    </details>
  );
}

async function choosePhotograph(): Promise<void> {
  const place = await fileToOpen('picture');
  if (!place) return;
  const taken = await host().call('reference.take', { picture: place.handle });
  if (!taken.ok) return tellProblem(taken.problem.sentence);
  const { mediaType, bytes, widthPx, heightPx } = taken.value;
  if (mediaType === 'image/webp') return;
  setCover({ mediaType, widthPx, heightPx, picture: base64Lines(bytes) });
}
