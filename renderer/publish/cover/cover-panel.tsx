/** What the cover shows: the hanging as it is drawn, or the maker's own photograph. */
import { useStudio } from '../../store/use-studio.ts';
import { setCover } from '../pattern-deeds.ts';
import { choosePhotograph } from './choose-photograph.ts';

export function CoverPanel() {
  const cover = useStudio((state) => state.open?.design.pattern?.cover);
  return (
    <details data-fold="cover">
      <summary>Cover</summary>
      <p>
        {cover ? 'The cover shows your photograph.' : 'The cover shows the finished hanging as it is drawn.'}
      </p>
      <div className="choices">
        <button type="button" onClick={choosePhotograph}>
          {cover ? 'Another photograph…' : 'A photograph of yours…'}
        </button>
        <button type="button" aria-disabled={!cover} onClick={() => setCover(undefined)}>
          The drawn hanging
        </button>
      </div>
    </details>
  );
}
