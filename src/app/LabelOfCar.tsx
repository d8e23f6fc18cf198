/** The form of the conversion label and its page: typed in, or charge and lubricant out of a session file. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { CONVERTED_TO, conversionLabel, type LabelInputs } from '../export/card/conversionLabel';
import { labelFromText, type WrittenLabel } from '../export/card/labelFromLog';
import { sheetElement } from '../export/card/sheetElement';
import { formatQuantity } from '../units/format';
import { word } from '../words/words';
import { Typed } from './cardFields';
import { quantityOr, typedName } from './cardTyped';

interface LabelTyped {
  readonly charge: string;
  readonly oil: string;
  readonly oilAmount: string;
  readonly oilMaker: string;
  readonly tradeName: string;
  readonly by: string;
  readonly company: string;
  readonly address: string;
  readonly date: string;
}

const FIRST: LabelTyped = {
  charge: '680 g',
  oil: 'PAG',
  oilAmount: '240 mL',
  oilMaker: '',
  tradeName: '',
  by: '',
  company: '',
  address: '',
  date: '',
};

const SIGNED = () =>
  [
    ['oilMaker', word('carCard.label.oilMaker')],
    ['tradeName', word('carCard.label.trade')],
    ['by', word('carCard.label.by')],
    ['company', word('carCard.label.company')],
    ['address', word('carCard.label.address')],
    ['date', word('carCard.label.date')],
  ] as const;

function readLabel(typed: LabelTyped): LabelInputs | { readonly wrong: string } {
  const { charge, oilAmount, ...rest } = typed;
  const chargeKg = quantityOr(charge, 'mass');
  const oilM3 = quantityOr(oilAmount, 'volume');
  const wrong = (name: string, example: string) => ({
    wrong: word('carCard.form.notQuantity', { name, example }),
  });
  if (chargeKg === undefined) return wrong(typedName('charge'), FIRST.charge);
  if (oilM3 === undefined) return wrong(word('carCard.form.oilAmount'), FIRST.oilAmount);
  return { ...rest, chargeKg, oilM3 };
}

function troubleWith(found: WrittenLabel | null): string | null {
  if (!found) return word('carCard.form.noLabel');
  const { refrigerant } = found;
  return refrigerant === CONVERTED_TO ? null : word('carCard.label.otherGas', { written: refrigerant });
}

export function LabelOfCar(): JSX.Element {
  const [typed, setTyped] = createSignal<LabelTyped>(FIRST);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const change = (part: Partial<LabelTyped>): void => void setTyped({ ...typed(), ...part });
  const fromFile = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    try {
      const found = labelFromText(await file.text());
      const wrong = troubleWith(found);
      setTrouble(wrong);
      if (!found || wrong !== null) return;
      change({
        charge: formatQuantity(found.chargeKg, 'g', 1).replace(',', ''),
        oil: found.oil,
        oilAmount: formatQuantity(found.oilM3, 'mL', 1),
      });
    } catch {
      setTrouble(word('carCard.form.badFile'));
    }
  };
  const read = () => readLabel(typed());
  const sheet = (): LabelInputs | null => {
    const found = read();
    return 'wrong' in found ? null : found;
  };
  const said = (): string | null => {
    const found = read();
    return 'wrong' in found ? found.wrong : trouble();
  };
  return (
    <>
      <section class="panel card-form" aria-label={word('carCard.form.typed')} data-region tabIndex={-1}>
        <label class="field">
          <span>{word('carCard.form.fromFile')}</span>
          <input
            type="file"
            accept=".json"
            onChange={(event) => void fromFile(event.currentTarget.files?.[0])}
          />
        </label>
        <Show when={said()}>
          <p role="status">{said()}</p>
        </Show>
        <Typed name={typedName('charge')} value={typed().charge} onType={(charge) => change({ charge })} />
        <Typed name={word('carCard.form.oil')} value={typed().oil} onType={(oil) => change({ oil })} />
        <Typed
          name={word('carCard.form.oilAmount')}
          value={typed().oilAmount}
          onType={(oilAmount) => change({ oilAmount })}
        />
        <For each={SIGNED()}>
          {([field, name]) => (
            <Typed name={name} value={typed()[field]} onType={(text) => change({ [field]: text })} />
          )}
        </For>
      </section>
      <section class="card-sheet" aria-label={word('carCard.form.page')} data-region tabIndex={-1}>
        <Show when={sheet()}>{(made) => sheetElement(conversionLabel(made()))}</Show>
      </section>
    </>
  );
}
