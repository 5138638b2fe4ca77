/** One call of the command line, from its words to its exit code. */
import { parseArgs } from 'node:util';
import { good, type Result } from '../../shared/result.ts';
import { wordsFault } from '../services/words-fault.ts';
import { type CliVerb, type Terminal, USAGE, usage, type Words } from './cli-verb.ts';
import { helpText, usageHint, verbHelpText } from './help.ts';
import { verbs } from './verbs.ts';

export type ExitCode = 0 | 1 | 2;

export async function run(words: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const [name, ...rest] = words;
  if (name === '--help' || name === '-h') {
    terminal.print(helpText());
    return 0;
  }
  const entry = name !== undefined && Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (name === undefined || !entry) {
    terminal.remark(name === undefined ? 'A verb is missing.\n' : `There is no verb “${name}”.\n`);
    terminal.remark(`The verbs are ${Object.keys(verbs).join(', ')}; --help tells what they do.\n`);
    return 2;
  }
  const verb = await entry.load();
  if (asksForHelp(rest)) {
    terminal.print(verbHelpText(name, entry.summary, verb));
    return 0;
  }
  const parsed = parse(rest, verb);
  const result = parsed.ok ? await verb.run(parsed.value, terminal) : parsed;
  if (result.ok) return 0;
  terminal.remark(`${result.problem.sentence}\n`);
  if (result.problem.code !== USAGE) return 1;
  terminal.remark(`${usageHint(name, verb)}\n`);
  return 2;
}

/** After '--' everything is a name of a file, even this. */
function asksForHelp(words: readonly string[]): boolean {
  const end = words.indexOf('--');
  return words.slice(0, end < 0 ? undefined : end).some((word) => word === '--help' || word === '-h');
}

function parse(words: readonly string[], { options, needs }: CliVerb): Result<Words> {
  let parsed: { values: Words['values']; positionals: string[] };
  try {
    parsed = parseArgs({ args: [...words], options, allowPositionals: true, strict: true }) as typeof parsed;
  } catch (error) {
    return usage(wordsFault(error));
  }
  const { positionals } = parsed;
  const missing = needs[positionals.length];
  if (missing) return usage(`${missing} is missing.`);
  if (positionals.length > needs.length) return usage(`“${positionals[needs.length]}” is one word too many.`);
  return good(parsed);
}
