/** How the scene comes on to the canvas: stamps on whole pixels, shares multiplied, ways inked in their order. */
import { Container, Sprite, Texture } from 'pixi.js';
import { expect, test, vi } from 'vitest';
import { paintScene } from '../../src/bay/scenePainter';
import { WayStrokes } from '../../src/bay/wayStrokes';

// pixi asks which browser it is in as it is loaded
vi.hoisted(() => vi.stubGlobal('navigator', { userAgent: '' }));

/** A canvas that writes down what it is told. */
function listening() {
  const told: string[] = [];
  const rounded = (numbers: readonly number[]): string => numbers.map((n) => n.toFixed(2)).join(' ');
  const ink = {
    globalAlpha: 1,
    lineWidth: 1,
    setTransform: (...matrix: number[]) => told.push(`at ${rounded(matrix)}`),
    drawImage: () => told.push(`stamp ${ink.globalAlpha.toFixed(2)}`),
    stroke: () => told.push(`stroke ${ink.lineWidth} ${ink.globalAlpha.toFixed(2)}`),
    fill: () => told.push(`fill ${ink.globalAlpha.toFixed(2)}`),
  };
  return { told, ink: ink as unknown as CanvasRenderingContext2D };
}

function stamp(x: number, y: number): Sprite {
  const source = { resource: {} };
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
  paintScene(ink, stage, 1);
  expect(told).toEqual([
    'at 1.00 0.00 0.00 1.00 3.00 5.00',
    'stamp 1.00',
    'at 0.00 1.00 -1.00 0.00 3.30 4.60',
    'stamp 1.00',
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
  paintScene(ink, world, 2);
  expect(told).toEqual(['at 1.00 0.00 0.00 1.00 3.00 5.00', 'stamp 0.25']);
});

test('ways are stroked or filled in their order', () => {
  const { told, ink } = listening();
  const ways = new WayStrokes();
  const way = {} as Path2D;
  ways.strokes = [
    { way, width: 3, color: '#000', alpha: 0.5 },
    { way, width: null, color: '#fff', alpha: 1 },
  ];
  paintScene(ink, ways, 1);
  expect(told).toEqual(['at 1.00 0.00 0.00 1.00 0.00 0.00', 'stroke 3 0.50', 'fill 1.00']);
});
