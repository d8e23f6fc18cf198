import { describe, expect, it } from 'vitest';
import type { ReportInputs } from '../../src/export/report/inputs';
import { makeReport } from '../../src/export/report/makeReport';
import { safe } from '../../src/export/report/page';
import { plot } from '../../src/export/report/plot';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { physicsReport, reportInputs } from '../reference/physicsReport';

/** One car, one weather: enough to see that the page follows the model. */
function brief(boilingShare: number): string {
  const car = vehicleOf('hatchback');
  const parts = car.lowSide.parts.map((part) =>
    part.part === 'evaporator' ? { ...part, twoPhase: boilingShare * part.twoPhase } : part,
  );
  const inputs: ReportInputs = {
    ...reportInputs,
    vehicles: [{ ...car, lowSide: { ...car.lowSide, parts } }],
    printed: {
      ...reportInputs.printed,
      bands: { stationary: { ...reportInputs.printed.bands.stationary, rows: [[32, 0.5, 1410, 1620]] } },
    },
  };
  return makeReport(inputs, ['weather']);
}

describe('the physics report', () => {
  it('is the same page from the same model, and another when one conductance changes', () => {
    const page = brief(1);
    expect(brief(1)).toBe(page);
    expect(brief(0.9)).not.toBe(page);
  });

  it('says its sources beside its figures, and asks nothing of the network', () => {
    const page = physicsReport(['orifice', 'properties']);
    expect(page).toContain('Payne, W.V.');
    expect(page).toContain('R-1234yf');
    expect(page).not.toMatch(/(src|href)="(?!#)/);
  });

  it('refuses a section that there is not', () => {
    expect(() => physicsReport(['weather', 'tides'])).toThrow('no section "tides"');
  });
});

describe('a plot', () => {
  it('puts larger values higher', () => {
    const points = [
      [0, 1],
      [1, 2],
    ] as const;
    const svg = plot({ title: 't', x: 'x', y: 'y', lines: [{ name: 'a', points }] });
    const [, y0, y1] = /d="M[\d.]+,([\d.]+)L[\d.]+,([\d.]+)"/.exec(svg) ?? [];
    expect(Number(y1)).toBeLessThan(Number(y0));
  });

  it('makes text safe', () => {
    expect(safe('a < b & "c"')).toBe('a &lt; b &amp; &quot;c&quot;');
  });
});
