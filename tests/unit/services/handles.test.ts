import { describe, expect, it } from 'vitest';
import { isWithin } from '../../../app/services/grants.ts';
import { createHandles } from '../../../app/services/handles.ts';

describe('a handle', () => {
  it('is one word for one kind and path, and says nothing of them', () => {
    const handles = createHandles();
    const { handle, name } = handles.give('design', '/shelf/Fox.larkrow');
    expect(name).toBe('Fox.larkrow');
    expect(handle).toMatch(/^[\w-]{24}$/);
    expect(handles.give('design', '/shelf/Fox.larkrow').handle).toBe(handle);
    expect(handles.give('folder', '/shelf/Fox.larkrow').handle).not.toBe(handle);
    expect(createHandles().give('design', '/shelf/Fox.larkrow').handle).not.toBe(handle);
  });

  it('stays pointed at, once it was', () => {
    const handles = createHandles();
    const { handle } = handles.give('design', '/fox', { pointedAt: true });
    handles.give('design', '/fox');
    expect(handles.take(handle, 'design')).toMatchObject({ value: { pointedAt: true } });
  });

  it('goes with its file, and leaves the old name to another', () => {
    const handles = createHandles();
    const { handle } = handles.give('design', '/fox');
    handles.move(handle, '/owl');
    expect(handles.take(handle, 'design')).toMatchObject({ value: { path: '/owl' } });
    expect(handles.give('design', '/owl').handle).toBe(handle);
    expect(handles.give('design', '/fox').handle).not.toBe(handle);
  });
});

describe('what lies within a folder', () => {
  it.each([
    ['/a/b', '/a', true],
    ['/a', '/a', true],
    ['/a/..b', '/a', true],
    ['/ab', '/a', false],
    ['/', '/a', false],
    ['/b', '/a', false],
    ['/anything', '/', true],
  ])('%s within %s: %s', (path, folder, within) => {
    expect(isWithin(path, folder)).toBe(within);
  });
});
