/** Dowel, finished size and grading: what fits, how many cords and rows, and the same picture in other thicknesses. */
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { DowelTable } from './dowel-table.tsx';
import { FinishedSize } from './finished-size.tsx';
import { Grading } from './grading.tsx';
import './sizes.css';

export function SizesLeaf() {
  const open = useStudio((state) => state.open);
  if (!open) return null;
  const { design } = open;
  return (
    <LeafPage
      title="Sizes"
      about="Begin with the dowel that you have, with the size that the wall wants, or with another cord or yarn."
    >
      <DowelTable design={design} />
      <FinishedSize design={design} />
      <Grading open={open} />
    </LeafPage>
  );
}
