/** Holds every layout at once: for the command line and the tests, which ask for any of them. */
import type { Layout } from './layout';
import { keepLayout } from './layouts';

const files = import.meta.glob<Layout>('../../shared/vehicles/*.layout.yaml', {
  eager: true,
  import: 'default',
});

for (const layout of Object.values(files)) keepLayout(layout);
