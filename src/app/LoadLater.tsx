/**
 * Parts of the page that are loaded when they are wanted. Where one does not come (a newer version replaced it, the
 * network is gone) a page says so, with a way to ask again and a way back; nothing of the session is lost by it.
 */
import { ErrorBoundary, type JSX, Suspense } from 'solid-js';
import { Missing } from '../panels/Missing';
import { NotFetched } from '../panels/reachable';

export function LoadLater(props: {
  readonly waiting: JSX.Element;
  readonly onBack?: () => void;
  readonly onHome: () => void;
  readonly children: JSX.Element;
}): JSX.Element {
  const missing = (error: unknown, again: () => void): JSX.Element => {
    if (!(error instanceof NotFetched)) console.error(error);
    return (
      <Missing
        onAgain={again}
        onReload={navigator.onLine ? () => location.reload() : null}
        onBack={props.onBack ?? null}
        onHome={props.onHome}
      />
    );
  };
  return (
    <ErrorBoundary fallback={missing}>
      <Suspense fallback={props.waiting}>{props.children}</Suspense>
    </ErrorBoundary>
  );
}
