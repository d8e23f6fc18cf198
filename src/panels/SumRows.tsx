/** Sums that are worked out on paper and written on the card: which, and what it comes to. */
import { createSignal, For, type JSX } from 'solid-js';
import { word } from '../words/words';
import { NumberField } from './NumberField';
import type { SessionModel } from './sessionModel';

const MOST = 5000;
const SUMS = ['charge', 'net', 'cans', 'remainder', 'hose', 'oil'] as const;
type Sum = (typeof SUMS)[number];

const sumName = (sum: Sum): string =>
  ({
    charge: () => word('task.sum.charge'),
    net: () => word('task.sum.net'),
    cans: () => word('task.sum.cans'),
    remainder: () => word('task.sum.remainder'),
    hose: () => word('task.sum.hose'),
    oil: () => word('task.sum.oil'),
  })[sum]();

export function SumRows(props: { readonly session: SessionModel }): JSX.Element {
  const [of, setOf] = createSignal<Sum>('charge');
  const [amount, setAmount] = createSignal(0);
  return (
    <>
      <label class="field">
        <span>{word('task.sum.title')}</span>
        <select onChange={(event) => setOf(SUMS[event.currentTarget.selectedIndex])}>
          <For each={SUMS}>{(sum) => <option selected={sum === of()}>{sumName(sum)}</option>}</For>
        </select>
      </label>
      <NumberField label={word('task.sum.is')} value={amount()} most={MOST} onSet={setAmount} />
      <button
        type="button"
        class="btn"
        onClick={() => props.session.send({ do: 'sum', of: of(), amount: amount() })}
      >
        {word('task.sum.write')}
      </button>
    </>
  );
}
