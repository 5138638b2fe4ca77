/** The texts of --help. */
import type { CliVerb } from './cli-verb.ts';
import { verbs } from './verbs.ts';

const COMMAND = 'npm run -s larkrow --';

export function helpText(): string {
  const wide = Math.max(...Object.keys(verbs).map((name) => name.length));
  return [
    `Use: ${COMMAND} VERB …`,
    '',
    ...Object.entries(verbs).map(([name, { summary }]) => `  ${name.padEnd(wide)}  ${summary}`),
    '',
    `Help for one verb: ${COMMAND} VERB --help`,
    'Exit codes: 0 done, 1 the input is at fault, 2 wrong usage.',
    '',
  ].join('\n');
}

export function verbHelpText(name: string, summary: string, { use, details }: CliVerb): string {
  const sentence = `${summary[0]?.toUpperCase()}${summary.slice(1)}.`;
  return [`Use: ${COMMAND} ${name} ${use}`, '', sentence, '', ...details, ''].join('\n');
}

export function usageHint(name: string, { use }: CliVerb): string {
  return `Use: ${COMMAND} ${name} ${use}`;
}
