/** How the scene is inked: stamps on whole pixels, shares multiplied, ways inked in their order. */
import { Container, Sprite, Texture } from 'pixi.js';
import { expect, test, vi } from 'vitest';
import type { Inks } from '../../src/bay/ink/inks';
import { Way } from '../../src/bay/ink/way';
import { inkScene } from '../../src/bay/inkScene';
import { WayStrokes } from '../../src/bay/wayStrokes';

// pixi asks which browser it is in as it is loaded
vi.hoisted(() => vi.stubGlobal('navigator', { userAgent: '' }));

/** Inks that write down what they are told. */
function listening() {
  const told: string[] = [];
  const rounded = (numbers: readonly number[]): string => numbers.map((n) => n.toFixed(2)).join(' ');
  const [now, nothing] = [{ alpha: 1, width: 0 }, () => undefined];
  const ink: Inks = {
    at: (...matrix) => told.push(`at ${rounded(matrix)}`),
    alpha(share) {
      now.alpha = share;
    },
    line(width) {
      now.width = width;
    },
    stamp: (picture) => told.push(`stamp ${picture} ${now.alpha.toFixed(2)}`),
    stroke: () => told.push(`stroke ${now.width} ${now.alpha.toFixed(2)}`),
    fill: () => told.push(`fill ${now.alpha.toFixed(2)}`),
    colour: (hex) => told.push(hex),
    begin: nothing,
    moveTo: (x, y) => told.push(`to ${rounded([x, y])}`),
    lineTo: (x, y) => told.push(`line ${rounded([x, y])}`),
    quadraticTo: nothing,
    closed: nothing,
    circle: nothing,
    roundRect: nothing,
  };
  return { told, ink };
}

function stamp(x: number, y: number): Sprite {
  const source = { resource: { picture: 7 } };
  const sprite = new Sprite();
  Object.defineProperty(sprite, 'texture', {
    value: { ...Texture.EMPTY, source, frame: { width: 10, height: 10 } },
  });
  sprite.position.set(x, y);
  return sprite;
}

test('a stamp shown as it was painted goes on whole pixels, a turned one where it is', () => {
  const { told, ink } = listening();
  const turned = stamp(3.3, 4.6);
  turned.rotation = Math.PI / 2;
  const stage = new Container();
  stage.addChild(stamp(3.3, 4.6), turned);
  inkScene(ink, stage, 1);
  expect(told).toEqual([
    'at 1.00 0.00 0.00 1.00 3.00 5.00',
    'stamp 7 1.00',
    'at 0.00 1.00 -1.00 0.00 3.30 4.60',
    'stamp 7 1.00',
  ]);
});

test('a painted millimetre is as many pixels as camera and screen make of it', () => {
  const { told, ink } = listening();
  const world = new Container();
  world.scale.set(0.5);
  const one = stamp(3, 5);
  one.scale.set(1);
  world.addChild(one);
  world.alpha = 0.5;
  one.alpha = 0.5;
  inkScene(ink, world, 2);
  expect(told).toEqual(['at 1.00 0.00 0.00 1.00 3.00 5.00', 'stamp 7 0.25']);
});

test('ways are stroked or filled in their order', () => {
  const { told, ink } = listening();
  const ways = new WayStrokes();
  const way = new Way();
  way.moveTo(1, 2);
  way.lineTo(3, 4);
  ways.strokes = [
    { way, width: 3, color: '#000000', alpha: 0.5 },
    { way, width: null, color: '#ffffff', alpha: 1 },
  ];
  inkScene(ink, ways, 1);
  const way12 = ['to 1.00 2.00', 'line 3.00 4.00'];
  expect(told).toEqual([
    'at 1.00 0.00 0.00 1.00 0.00 0.00',
    ...['#000000', ...way12, 'stroke 3 0.50'],
    ...['#ffffff', ...way12, 'fill 1.00'],
  ]);
});
