/** The designer's page: who made the pattern, and where to turn to. */
import type { Worded } from './worded.ts';

interface DesignerWords {
  readonly title: string;
  /** Where somebody else publishes the pattern than designed the hanging. */
  readonly publishedBy: (name: string) => string;
  readonly contact: string;
  /** For those who can't see it. */
  readonly picture: (title: string) => string;
  readonly thanks: string;
  readonly thanksText: (title: string) => string;
  readonly mistakes: string;
  /** Where a contact is told, and where none is. */
  readonly mistakesText: (edition: string, hasContact: boolean) => string;
  readonly errata: (edition: string) => string;
}

export const designerWords: Worded<DesignerWords> = {
  en: {
    title: 'About the designer',
    publishedBy: (name) => `published by ${name}`,
    contact: 'Contact',
    picture: (title) => `The picture of “${title}” as it is knotted.`,
    thanks: 'Thank you',
    thanksText: (title) =>
      `Thank you for tying “${title}”. A photograph of the finished hanging on its wall is always welcome.`,
    mistakes: 'Should you find a mistake',
    mistakesText: (edition, hasContact) =>
      `Chart, rows and figures are computed from one design, but a mistake may still have crept in.${edition ? ` This is ${edition}.` : ''}${hasContact ? ' Please write, and name the page and the row.' : ''}`,
    errata: (edition) => `Errata to ${edition}`,
  },
  de: {
    title: 'Entwurf und Kontakt',
    publishedBy: (name) => `herausgegeben von ${name}`,
    contact: 'Kontakt',
    picture: (title) => `Das geknüpfte Bild von „${title}“.`,
    thanks: 'Danke',
    thanksText: (title) =>
      `Danke, dass Sie „${title}“ knüpfen. Ein Foto des fertigen Wandbehangs an seiner Wand ist immer willkommen.`,
    mistakes: 'Wenn etwas nicht stimmt',
    mistakesText: (edition, hasContact) =>
      `Zählmuster, Reihen und Zahlen sind aus demselben Entwurf berechnet; trotzdem kann sich ein Fehler eingeschlichen haben.${edition ? ` Sie haben die ${edition}.` : ''}${hasContact ? ' Bitte schreiben Sie dann und nennen Sie Seite und Reihe.' : ''}`,
    errata: (edition) => `Berichtigungen zur ${edition}`,
  },
};
