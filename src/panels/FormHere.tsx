/** Where forms stand over the bay. One that cannot be fetched says so in its place; the bay stays as it is. */
import { ErrorBoundary, type JSX, Suspense } from 'solid-js';
import { comingLater } from './comingLater';
import { FormMissing } from './Missing';
import { NotFetched } from './reachable';
import type { WorkUi } from './workUi';

/** Forms are fetched when the first one is opened, or while nothing else is to do. */
const OpenForm = comingLater(() => import('./OpenForm'));
export const formsAhead = OpenForm.ahead;

export function FormHere(props: {
  readonly ui: WorkUi;
  readonly onConnect: (hose: string, port: string) => void;
}): JSX.Element {
  const missing = (error: unknown, again: () => void): JSX.Element => {
    if (!(error instanceof NotFetched)) throw error;
    return <FormMissing onAgain={again} onClose={props.ui.close} />;
  };
  return (
    <ErrorBoundary fallback={missing}>
      <Suspense>
        <OpenForm ui={props.ui} onConnect={props.onConnect} />
      </Suspense>
    </ErrorBoundary>
  );
}
