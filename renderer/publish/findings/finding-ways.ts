/** The way from a finding to where it is seen and mended: what the way is called, and going it. */
import type { Place, Setting } from '../../../shared/pattern/preflight/finding.ts';
import { goToCell } from '../../draw/go-to-cell.ts';
import { changeHanging } from '../../draw/hanging-dialog.tsx';
import { unfoldColumn } from '../../plan/columns/folds.ts';
import { type Leaf, showLeaf } from '../../plan/leaves/leaves.ts';
import type { Screen } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { editImprint } from '../imprint/imprint-dialog.tsx';
import { goToPage } from '../pages/show-page.ts';
import { patternTexts } from '../texts/pattern-texts.ts';
import { type Foldable, unfold } from '../unfold.ts';

/** As it stands on the button. */
export function wayName(place: Place): string {
  switch (place.on) {
    case 'page':
      return `Go to page ${place.page}`;
    case 'cell':
      return `Go to row ${place.row}, cord ${place.cord}`;
    case 'text':
      return `Go to the text: ${patternTexts.find(({ name }) => name === place.text)?.label ?? ''}`;
    case 'setting':
      return ways[place.setting].name;
  }
}

export function goTo(place: Place): void {
  switch (place.on) {
    case 'page':
      goToPage(place.page);
      return;
    case 'cell':
      show('draw');
      requestAnimationFrame(() => goToCell({ row: place.row - 1, column: place.cord - 1 }));
      return;
    case 'text':
      unfold('texts', `[data-text="${place.text}"] textarea`)?.focus();
      return;
    case 'setting':
      ways[place.setting].go();
  }
}

interface Way {
  readonly name: string;
  readonly go: () => void;
}

const hanging: Way = { name: 'Go to this hanging', go: () => void changeHanging() };

const ways: Readonly<Record<Setting, Way>> = {
  imprint: { name: 'Go to the imprint', go: () => void editImprint() },
  title: hanging,
  designer: hanging,
  parts: { name: 'Go to the parts', go: () => focusOn('.publish-parts input') },
  copy: { name: 'Go to how it is printed', go: () => openFold('copy') },
  cover: { name: 'Go to the cover', go: () => openFold('cover') },
  editions: { name: 'Go to the editions', go: () => openFold('editions') },
  gauge: { name: 'Go to the swatches on Plan', go: () => openLeaf('swatches') },
  dowel: { name: 'Go to the sizes on Plan', go: () => openLeaf('sizes') },
  reserve: {
    name: 'Go to the reserve on Plan',
    go() {
      openLeaf('chart');
      unfoldColumn('settings');
      focusOn('.setting input[name="reserveShare"]');
    },
  },
  pins: {
    name: 'Go to the pins on Plan',
    go() {
      openLeaf('chart');
      focusOn('.pins button');
    },
  },
  yarns: {
    name: 'Go to the yarns on Draw',
    go() {
      show('draw');
      focusOn('.yarns button');
    },
  },
};

function show(screen: Screen): void {
  studio.setState({ screen });
}

function openLeaf(leaf: Leaf): void {
  show('plan');
  showLeaf(leaf);
  focusOn('.leaf-choice [aria-pressed="true"], .leaf-choice [aria-selected="true"]');
}

function openFold(name: Foldable): void {
  unfold(name)?.querySelector('summary')?.focus();
}

/** The first of them, once the screen that holds it stands. */
function focusOn(selector: string): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(selector)?.focus());
}
