import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** A small project: each file imports one other, which the rules allow or forbid. */
const allowed: Record<string, string> = {
  'shared/chart.ts': '',
  'shared/tied.ts': './chart.ts',
  'shared/round.ts': './and-round.ts',
  'app/services/shelf.ts': '../../shared/chart.ts',
  'app/cli/main.ts': '../services/shelf.ts',
  'app/electron/main.ts': 'node:fs',
  'renderer/main.ts': '../shared/chart.ts',
};
const forbidden: [what: string, from: string, to: string, rule: string][] = [
  ['the craft to the files of the machine', 'shared/a.ts', 'node:fs', 'shared-knows-only-the-craft'],
  ['the craft to a screen', 'shared/b.ts', '../renderer/main.ts', 'shared-knows-only-the-craft'],
  ['the page to Node', 'renderer/a.ts', 'node:fs', 'renderer-has-no-node'],
  ['the page to the services', 'renderer/b.ts', '../app/services/shelf.ts', 'renderer-sees-only-shared'],
  ['the services to the page', 'app/services/a.ts', '../../renderer/main.ts', 'app-sees-only-shared'],
  ['the services to a host', 'app/services/b.ts', '../electron/main.ts', 'services-know-no-host'],
  ['one host to another', 'app/cli/a.ts', '../electron/main.ts', 'hosts-stand-apart'],
  ['a file to one that is not there', 'app/cli/b.ts', './missing.ts', 'no-unresolved'],
  ['a file to itself by another', 'shared/and-round.ts', './round.ts', 'no-circles'],
];

interface Violation {
  from: string;
  rule: { name: string };
}

describe('the arrows between folders', () => {
  // Among the libraries, so that the project's own resolve as ours do.
  const project = mkdtempSync(join(root, 'node_modules', '.larkrow-arrows-'));
  let violations: Violation[];

  beforeAll(() => {
    const files = { ...allowed, ...Object.fromEntries(forbidden.map(([, from, to]) => [from, to])) };
    for (const [path, to] of Object.entries(files)) {
      mkdirSync(dirname(join(project, path)), { recursive: true });
      writeFileSync(
        join(project, path),
        to ? `export * as other from '${to}';\n` : 'export const knot = 1;\n',
      );
    }
    const { stdout } = spawnSync(
      process.execPath,
      [
        join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs'),
        ...['shared', 'app', 'renderer', '--output-type', 'json'],
        `--config=${join(root, '.dependency-cruiser.cjs')}`,
      ],
      { cwd: project, encoding: 'utf8' },
    );
    violations = (JSON.parse(stdout) as { summary: { violations: Violation[] } }).summary.violations;
  });
  afterAll(() => rmSync(project, { recursive: true, force: true }));

  it('allow what points to the craft and to the services', () => {
    expect(violations.filter(({ from }) => from in allowed)).toEqual([]);
  });

  it.each(forbidden)('forbid one from %s', (_, from, __, rule) => {
    expect(violations.filter((found) => found.from === from).map((found) => found.rule.name)).toContain(rule);
  });
});
