/** How a copy of a pattern is printed, as the options of a call say; the rest is as the design has it. */
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { copySchema } from '../../shared/design/pattern-schema.ts';
import { type Copy, copyOf } from '../../shared/pattern/copy.ts';
import { good, type Result } from '../../shared/result.ts';
import { usage, type Words } from './cli-verb.ts';

export const copyOptions = {
  language: { type: 'string' },
  ink: { type: 'string' },
  cells: { type: 'string' },
  rows: { type: 'string' },
  'rows-beside': { type: 'boolean' },
  'left-handed': { type: 'boolean' },
  'right-handed': { type: 'boolean' },
  'prepared-for': { type: 'string' },
} as const;

export const copyUse =
  '[--language en|de] [--ink colour|symbols|grey] [--cells standard|large] [--rows long|compact] [--rows-beside] [--left-handed|--right-handed] [--prepared-for NAME]';

export const copyDetails: readonly string[] = [
  'Where they are absent, the design says how it is printed:',
  '--language LANG     en or de',
  '--ink INK           symbols on the yarns’ colours, on white (symbols), or on greys',
  '--cells SIZE        cells of at least 4 mm, or of at least 6 mm (large)',
  '--rows FORM         written rows in words, or compact',
  '--rows-beside       rows written beside the chart, where there is room',
  '--left-handed       row 1 begins at the top right; --right-handed: at the top left',
  '--prepared-for NAME stands on every page',
];

/** The values of an enumeration, by their option's name. */
const lists = {
  language: ['language', copySchema.shape.language.unwrap().options],
  ink: ['ink', copySchema.shape.ink.unwrap().options],
  cells: ['cells', copySchema.shape.cells.unwrap().options],
  rows: ['rowsForm', copySchema.shape.rowsForm.unwrap().options],
} as const;

export function copyAsked({ values }: Words, design: Design): Result<Copy> {
  const asked: Record<string, unknown> = {};
  for (const [option, [key, allowed]] of Object.entries(lists)) {
    const value = values[option];
    if (value === undefined) continue;
    if (!(allowed as readonly unknown[]).includes(value))
      return usage(`--${option} takes ${allowed.join(' or ')}, not “${value}”.`);
    asked[key] = value;
  }
  if (values['left-handed'] === true && values['right-handed'] === true)
    return usage('--left-handed and --right-handed contradict each other.');
  if (values['rows-beside'] === true) asked.rowsBeside = true;
  if (values['left-handed'] === true) asked.leftHanded = true;
  if (values['right-handed'] === true) asked.leftHanded = false;
  const preparedFor = String(values['prepared-for'] ?? '');
  if (preparedFor.length > limits.nameChars)
    return usage(`--prepared-for takes at most ${limits.nameChars} characters.`);
  return good({ ...copyOf(design), ...asked, preparedFor });
}
