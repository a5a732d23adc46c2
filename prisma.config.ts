import { defineConfig } from 'prisma/config';

// The migrations are applied by the project's own runner (npm run db:migrate); this tells Prisma's tools where
// the models stand, for generating the client and for taking over one day.
// biome-ignore lint/style/noDefaultExport: Prisma looks for the default export
export default defineConfig({
  schema: 'prisma/schema',
  migrations: { path: 'prisma/migrations' },
});
