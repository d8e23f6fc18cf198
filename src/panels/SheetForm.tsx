/** The papers: service information, label, papers on the seat. Turning to a sheet is a command, so it is in the log. */
import { createSignal, For, type JSX, onMount, Show } from 'solid-js';
import { word } from '../words/words';
import { Segmented } from './controls';
import { Form } from './Form';
import type { SessionModel, Sheet } from './sessionModel';

function SheetBody(props: { readonly sheet: Sheet }): JSX.Element {
  return (
    <>
      <For each={props.sheet.paragraphs}>
        {(paragraph, index) => <p class={index() === 0 ? 'lead' : 's'}>{paragraph}</p>}
      </For>
      <Show when={props.sheet.rows.length > 0}>
        <table>
          <caption>{props.sheet.title}</caption>
          <Show when={props.sheet.head.length > 0}>
            <thead>
              <tr>
                <For each={props.sheet.head}>
                  {(name, column) => (
                    <th scope="col" classList={{ n: column() > 0 }}>
                      {name}
                    </th>
                  )}
                </For>
              </tr>
            </thead>
          </Show>
          <tbody>
            <For each={props.sheet.rows}>
              {(row) => (
                <tr>
                  <For each={row}>
                    {(value, column) => (
                      <td classList={{ n: column() > 0 }}>{column() > 0 ? <b>{value}</b> : value}</td>
                    )}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
    </>
  );
}

export function SheetForm(props: {
  readonly session: SessionModel;
  readonly first?: string;
  readonly onClose: () => void;
}): JSX.Element {
  const sheets = (): readonly Sheet[] => props.session.sheets();
  const [open, setOpen] = createSignal(props.first ?? sheets()[0]?.id ?? '');
  const turnTo = (id: string): void => {
    setOpen(id);
    if (!props.session.view().sheetsRead.includes(id)) props.session.send({ do: 'read-sheet', sheet: id });
  };
  onMount(() => turnTo(open()));
  return (
    <Form
      title={word('panels.sheet.title')}
      sub={word('panels.sheet.sub')}
      class="paper"
      closeLabel={word('app.close')}
      onClose={props.onClose}
      foot={
        <button type="button" class="btn pri" onClick={() => props.onClose()}>
          {word('panels.sheet.back')}
        </button>
      }
    >
      <Segmented
        deed
        label={word('panels.sheet.title')}
        options={sheets().map((sheet) => ({ value: sheet.id, label: sheet.title }))}
        value={open()}
        onChoose={turnTo}
      />
      <For each={sheets().filter((sheet) => sheet.id === open())}>
        {(sheet) => <SheetBody sheet={sheet} />}
      </For>
    </Form>
  );
}
