/**
 * Parts of the page that are loaded when they are wanted. Where one does not come (a newer version replaced it, the
 * network is gone) a page says so, with a way to load again and a way back; nothing of the session is lost by it.
 */
import { ErrorBoundary, type JSX, Suspense } from 'solid-js';
import { Missing } from '../panels/Missing';

export function LoadLater(props: {
  readonly waiting: JSX.Element;
  readonly onHome: () => void;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <ErrorBoundary
      fallback={(error: unknown) => (
        <Missing reason={String(error)} onReload={() => location.reload()} onHome={props.onHome} />
      )}
    >
      <Suspense fallback={props.waiting}>{props.children}</Suspense>
    </ErrorBoundary>
  );
}
