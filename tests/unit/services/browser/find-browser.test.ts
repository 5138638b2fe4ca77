import { describe, expect, it } from 'vitest';
import { findBrowser } from '../../../../app/services/browser/find-browser.ts';

/** A machine on which just these programs are installed. */
function machine(platform: NodeJS.Platform, env: Record<string, string>, programs: string[]) {
  return { platform, env, isProgram: (path: string) => programs.includes(path) };
}

const found = (path: string) => ({ ok: true, value: path });

describe('finding a browser', () => {
  it('takes the one that the person names, whatever else is there', () => {
    const env = { LARKROW_BROWSER: '/opt/mine', PATH: '/usr/bin' };
    expect(findBrowser(machine('linux', env, ['/usr/bin/chromium', '/opt/mine']))).toEqual(
      found('/opt/mine'),
    );
  });

  it('says so where the one that was named is no program, and takes no other', () => {
    const env = { LARKROW_BROWSER: '/opt/gone', PATH: '/usr/bin' };
    const answer = findBrowser(machine('linux', env, ['/usr/bin/chromium']));
    expect(answer).toMatchObject({ ok: false, problem: { code: 'no-browser' } });
    expect(JSON.stringify(answer)).toContain('LARKROW_BROWSER names /opt/gone');
  });

  it('prefers Chromium to its relatives, wherever it lies on the path', () => {
    const env = { PATH: '/first:/second' };
    const programs = ['/first/google-chrome', '/second/chromium'];
    expect(findBrowser(machine('linux', env, programs))).toEqual(found('/second/chromium'));
  });

  it('looks where packages put it even where PATH is empty', () => {
    expect(findBrowser(machine('linux', {}, ['/snap/bin/chromium']))).toEqual(found('/snap/bin/chromium'));
  });

  it('does not take a program from the current folder', () => {
    const answer = findBrowser(machine('linux', { PATH: '.:' }, ['chromium', './chromium']));
    expect(answer.ok).toBe(false);
  });

  it('finds an application of the person on a Mac', () => {
    const path = '/Users/wren/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge';
    expect(findBrowser(machine('darwin', { HOME: '/Users/wren' }, [path]))).toEqual(found(path));
  });

  it('finds one in the program folders of Windows', () => {
    const path = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { PROGRAMFILES: 'C:\\Program Files', 'PROGRAMFILES(X86)': 'C:\\Program Files (x86)' };
    expect(findBrowser(machine('win32', env, [path]))).toEqual(found(path));
  });

  it('says what to do where there is none', () => {
    const answer = findBrowser(machine('linux', { PATH: '/usr/bin' }, []));
    expect(answer).toMatchObject({ ok: false, problem: { code: 'no-browser' } });
    expect(JSON.stringify(answer)).toContain('install Chromium, or set LARKROW_BROWSER');
  });
});
