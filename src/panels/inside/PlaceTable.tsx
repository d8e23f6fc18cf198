/** The stretches of the loop as a table: what the cutaway shows by texture, tint and level, in words. */
import { Index, type JSX, Show } from 'solid-js';
import { type DisplayUnits, inWords, plainNumber, writeTemperature } from '../../instruments/displayUnits';
import type { Cell, HealthyLoop, LoopState } from '../../instruments/loop/loopState';
import { firstCell, phaseOf } from '../../instruments/loop/phases';
import { word } from '../../words/words';

const PERCENT = 100;

interface PlaceRow {
  readonly name: string;
  readonly cell: Cell;
  readonly note: string;
}

function phaseWord({ liquidRatio }: Cell): string {
  const phase = phaseOf(liquidRatio);
  if (phase === 'liquid') return word('inside.liquid');
  if (phase === 'vapour') return word('inside.vapour');
  return word('inside.place.mixture', {
    share: plainNumber(liquidRatio * PERCENT, liquidRatio < 0.1 ? 1 : 0),
  });
}

const meanOf = (cells: readonly Cell[]): Cell => ({
  liquidRatio: cells.reduce((sum, { liquidRatio }) => sum + liquidRatio, 0) / cells.length,
  temperatureK: cells[cells.length - 1].temperatureK,
});

/** From which share of its length on a coil is in a phase; empty where it never is. */
function turnsAt(ratios: readonly number[], phase: 'liquid' | 'vapour'): string {
  const index = firstCell(ratios, phase);
  if (index === null) return '';
  const share = plainNumber((index / ratios.length) * PERCENT);
  return phase === 'liquid'
    ? word('inside.place.fullFrom', { share })
    : word('inside.place.dryFrom', { share });
}

function withHealthy(own: string, healthy: string): string {
  if (healthy === '' || healthy === own) return own;
  return word('inside.place.withHealthy', { own: own || word('inside.place.never'), healthy });
}

function rowsOf(state: LoopState, healthy: HealthyLoop): PlaceRow[] {
  const ratios = (cells: readonly Cell[]): number[] => cells.map(({ liquidRatio }) => liquidRatio);
  const pot = {
    accumulator: word('instrument.loop.accumulator'),
    receiver: word('instrument.loop.receiver'),
    onCondenser: word('instrument.loop.drierOnCondenser'),
  }[state.build.pot];
  const potNote = Number.isFinite(healthy.pot)
    ? word('inside.place.healthyPot', { share: plainNumber(healthy.pot * PERCENT) })
    : '';
  const coil = (
    name: string,
    cells: readonly Cell[],
    phase: 'liquid' | 'vapour',
    sound: readonly number[],
  ) =>
    cells.length === 0
      ? []
      : [
          {
            name,
            cell: meanOf(cells),
            note: withHealthy(turnsAt(ratios(cells), phase), turnsAt(sound, phase)),
          },
        ];
  return [
    { name: word('inside.place.suction'), cell: state.suction, note: '' },
    { name: word('inside.place.discharge'), cell: state.discharge, note: '' },
    ...coil(word('instrument.loop.condenser'), state.condenser, 'liquid', healthy.condenser),
    { name: pot, cell: state.pot, note: potNote },
    { name: word('inside.place.liquid'), cell: state.liquid, note: '' },
    ...coil(word('instrument.loop.evaporator'), state.evaporator, 'vapour', healthy.evaporator),
    ...coil(word('instrument.loop.rear'), state.rear, 'vapour', []),
  ];
}

export function PlaceTable(props: {
  readonly state: LoopState;
  readonly healthy: HealthyLoop;
  readonly units: DisplayUnits;
}): JSX.Element {
  return (
    <table class="st4 places">
      <caption>{word('inside.place.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">{word('inside.place.name')}</th>
          <th scope="col" class="n">
            {word('inside.table.temperature')}
          </th>
          <th scope="col">{word('inside.table.phase')}</th>
          <th scope="col">{word('inside.place.note')}</th>
        </tr>
      </thead>
      <tbody>
        <Index each={rowsOf(props.state, props.healthy)}>
          {(row) => (
            <tr>
              <th scope="row">{row().name}</th>
              <td class="n">
                <Show when={Number.isFinite(row().cell.temperatureK)} fallback={word('instrument.nothing')}>
                  {inWords(writeTemperature(row().cell.temperatureK, props.units.temperature))}
                </Show>
              </td>
              <td>{phaseWord(row().cell)}</td>
              <td>{row().note}</td>
            </tr>
          )}
        </Index>
      </tbody>
    </table>
  );
}
