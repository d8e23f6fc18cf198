/** Steps of a conversion, each one command: ports, oil, seals, cut-out, what the old label said, the new label. */
import { createSignal, For, type JSX } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { Segmented, Stepped } from './controls';
import { Fold } from './Fold';
import { NumberField } from './NumberField';
import type { SessionModel } from './sessionModel';

interface Rows {
  readonly session: SessionModel;
}

type Oil = 'mineral' | 'PAG' | 'POE';
type Gas = 'R-12' | 'R-134a' | 'R-1234yf';

const OIL_ML = { least: 5, most: 300, step: 5, first: 60 } as const;
const MOST_G = 3000;
const MOST_ML = 500;

function OilKind(props: { readonly value: Oil; readonly onChoose: (kind: Oil) => void }): JSX.Element {
  return (
    <Segmented
      label={word('task.oil.kind')}
      options={[
        { value: 'mineral' as const, label: word('task.oil.mineral') },
        { value: 'PAG' as const, label: word('task.oil.PAG') },
        { value: 'POE' as const, label: word('task.oil.POE') },
      ]}
      value={props.value}
      onChoose={props.onChoose}
    />
  );
}

/** Oil poured into an open loop, where the compressor or a new part is. */
export function OilRows(props: Rows): JSX.Element {
  const [kind, setKind] = createSignal<Oil>('PAG');
  const [mL, setML] = createSignal<number>(OIL_ML.first);
  return (
    <div class="stack">
      <b class="s">{word('task.oil.title')}</b>
      <OilKind value={kind()} onChoose={setKind} />
      <Stepped
        label={word('task.oil.amount')}
        less={word('task.oil.less')}
        more={word('task.oil.more')}
        min={OIL_ML.least}
        max={OIL_ML.most}
        step={OIL_ML.step}
        value={mL()}
        text={word('panels.service.millilitres', { mL: plainNumber(mL()) })}
        onSet={setML}
      />
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'fill-oil', kind: kind(), mL: mL() })}
      >
        {word('task.oil.fill', { mL: plainNumber(mL()) })}
      </button>
    </div>
  );
}

export function PortSteps(props: Rows & { readonly port: string }): JSX.Element {
  const { send } = props.session;
  return (
    <div class="row wrap">
      <button type="button" class="btn sm" onClick={() => send({ do: 'convert-port', port: props.port })}>
        {word('task.port.convert')}
      </button>
      <button type="button" class="btn sm" onClick={() => send({ do: 'disable-port', port: props.port })}>
        {word('task.port.disable')}
      </button>
    </div>
  );
}

export function AllPortSteps(props: Rows): JSX.Element {
  return (
    <For each={props.session.view().ports}>
      {(port) => (
        <div class="stack">
          <span class="s">{props.session.nameOf(port.id)}</span>
          <PortSteps session={props.session} port={port.id} />
        </div>
      )}
    </For>
  );
}

export function CutOutButton(props: Rows): JSX.Element {
  return (
    <button type="button" class="btn sm" onClick={() => props.session.send({ do: 'fit-cut-out' })}>
      {word('task.cutOut')}
    </button>
  );
}

export function SealsButton(props: Rows): JSX.Element {
  return (
    <button type="button" class="btn sm" onClick={() => props.session.send({ do: 'renew-seals' })}>
      {word('task.seals')}
    </button>
  );
}

/** Goes on the card before the old label is covered. */
export function OldRows(props: Rows): JSX.Element {
  const [grams, setGrams] = createSignal(0);
  const [mL, setML] = createSignal(0);
  return (
    <div class="stack">
      <b class="s">{word('task.old.title')}</b>
      <NumberField label={word('task.old.grams')} value={grams()} most={MOST_G} step={5} onSet={setGrams} />
      <NumberField label={word('task.old.mL')} value={mL()} most={MOST_ML} step={5} onSet={setML} />
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'note-old', grams: grams(), mL: mL() })}
      >
        {word('task.old.write')}
      </button>
    </div>
  );
}

export function NewLabelRows(props: Rows): JSX.Element {
  const [gas, setGas] = createSignal<Gas>('R-134a');
  const [grams, setGrams] = createSignal(0);
  const [kind, setKind] = createSignal<Oil>('POE');
  const [mL, setML] = createSignal(0);
  const write = (): void =>
    props.session.send({
      do: 'label-conversion',
      refrigerant: gas(),
      grams: grams(),
      oil: kind(),
      mL: mL(),
    });
  return (
    <div class="stack">
      <b class="s">{word('task.newLabel.conversion')}</b>
      <Segmented
        label={word('task.newLabel.refrigerant')}
        options={[
          { value: 'R-12' as const, label: word('task.gas.R-12') },
          { value: 'R-134a' as const, label: word('task.gas.R-134a') },
          { value: 'R-1234yf' as const, label: word('task.gas.R-1234yf') },
        ]}
        value={gas()}
        onChoose={setGas}
      />
      <NumberField
        label={word('task.newLabel.grams')}
        value={grams()}
        most={MOST_G}
        step={5}
        onSet={setGrams}
      />
      <OilKind value={kind()} onChoose={setKind} />
      <NumberField label={word('task.newLabel.mL')} value={mL()} most={MOST_ML} step={5} onSet={setML} />
      <button type="button" class="btn sm" onClick={write}>
        {word('task.newLabel.write')}
      </button>
    </div>
  );
}

/** All of a conversion in one place, for who would rather not go from part to part. */
export function ConversionRows(props: { readonly session: SessionModel }): JSX.Element {
  const { session } = props;
  return (
    <>
      <Fold title={word('task.convert.ports')} name="convert" open>
        <AllPortSteps session={session} />
      </Fold>
      <Fold title={word('task.convert.inside')} name="convert">
        <OilRows session={session} />
        <div class="row wrap">
          <SealsButton session={session} />
          <CutOutButton session={session} />
        </div>
      </Fold>
      <Fold title={word('task.convert.paper')} name="convert">
        <OldRows session={session} />
        <NewLabelRows session={session} />
      </Fold>
    </>
  );
}
