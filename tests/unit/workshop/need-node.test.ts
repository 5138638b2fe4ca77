import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const script = readFileSync(new URL('../../../build/need-node.cjs', import.meta.url), 'utf8');

/** What the check says and does in a Node of this version. */
function checkedBy(version: string) {
  let said = '';
  let code: number | undefined;
  const stand = {
    versions: { node: version },
    stderr: {
      write: (text: string) => {
        said += text;
      },
    },
    exit: (given: number) => {
      code = given;
    },
  };
  new Function('process', script)(stand);
  return { said, code };
}

describe('the version of Node', () => {
  it.each(['20.19.0', '20.20.2', '22.12.0', '23.4.0', '24.21.0', '100.0.0'])('%s works', (version) => {
    expect(checkedBy(version)).toEqual({ said: '', code: undefined });
  });

  it.each(['4.9.1', '14.21.3', '18.20.8', '20.18.9', '21.7.3', '22.11.0'])(
    '%s gets one sentence that says what to do',
    (version) => {
      const { said, code } = checkedBy(version);
      expect(code).toBe(1);
      expect(said).toBe(
        `Larkrow needs Node 20.19 or later (of 22: 22.12 or later), and this is Node ${version}: install a current one from https://nodejs.org and run the command again.\n`,
      );
    },
  );
});
