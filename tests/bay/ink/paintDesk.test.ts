/** What a paint desk keeps is stamped until it is dropped, and a bitmap it kept is closed then. */
import { expect, test, vi } from 'vitest';
import { createInkList } from '../../../src/bay/ink/inkList';
import { createPaintDesk } from '../../../src/bay/ink/paintDesk';

const ORDER = { width: 30, height: 20, ground: null, palette: {}, layers: [] };

/** A canvas in name: what its pen was told. */
function canvas() {
  const told: string[] = [];
  const pen = new Proxy({}, { get: (_, name) => () => told.push(String(name)), set: () => true });
  return { told, width: 0, height: 0, getContext: () => pen };
}

function desk() {
  const bitmap = { close: vi.fn() };
  const shown = canvas();
  const blank = { ...canvas(), transferToImageBitmap: () => bitmap };
  const tell = createPaintDesk(
    shown as unknown as OffscreenCanvas,
    () => blank as unknown as OffscreenCanvas,
  );
  const stamped = (picture: number): boolean => {
    const list = createInkList();
    list.stamp(picture, 0, 0, 30, 20);
    shown.told.length = 0;
    tell({ do: 'show', width: 300, height: 200, inked: list.taken() });
    return shown.told.includes('drawImage');
  };
  return { tell, bitmap, blank, stamped };
}

test('a kept picture has the size that was ordered and is stamped', () => {
  const { tell, blank, stamped } = desk();
  tell({ do: 'keep', picture: 7, order: ORDER });
  expect([blank.width, blank.height]).toEqual([30, 20]);
  expect(stamped(7)).toBe(true);
  expect(stamped(8)).toBe(false);
});

test('a dropped picture is closed and stamped no more', () => {
  const { tell, bitmap, stamped } = desk();
  tell({ do: 'keep', picture: 7, order: ORDER });
  expect(bitmap.close).not.toHaveBeenCalled();
  tell({ do: 'drop', picture: 7 });
  expect(bitmap.close).toHaveBeenCalledOnce();
  expect(stamped(7)).toBe(false);
});
