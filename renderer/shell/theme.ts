/** Keeps the page's theme as the settings ask: light, dark, or whatever the system shows. */
import { studio } from '../store/studio.ts';

export function followTheme(): () => void {
  const system = window.matchMedia('(prefers-color-scheme: dark)');
  const show = () => {
    const { theme } = studio.getState().settings;
    document.documentElement.dataset.theme = theme === 'system' ? (system.matches ? 'dark' : 'light') : theme;
  };
  show();
  system.addEventListener('change', show);
  const unsubscribe = studio.subscribe((state, before) => {
    if (state.settings.theme !== before.settings.theme) show();
  });
  return () => {
    system.removeEventListener('change', show);
    unsubscribe();
  };
}
