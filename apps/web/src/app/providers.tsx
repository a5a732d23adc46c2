import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { useState } from 'react';
import { createQueries } from '../server/queries.js';
import { createPages } from './router.js';

/** The stores that every page needs, made once. */
export function Providers() {
  const [queries] = useState(createQueries);
  const [pages] = useState(() => createPages(queries));
  return (
    <QueryClientProvider client={queries}>
      <RouterProvider router={pages} />
    </QueryClientProvider>
  );
}
