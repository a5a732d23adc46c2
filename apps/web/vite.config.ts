import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const source = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export const config = defineConfig(({ mode }) => ({
  plugins: [react()],
  resolve: {
    // The libraries' sources, so that the client builds without their compiled output.
    alias: [
      {
        find: /^@strutbook\/api-client\/(.*)\.js$/,
        replacement: `${source('../../libs/api-client/src/')}$1.ts`,
      },
      { find: /^@strutbook\/domain\/(.*)\.js$/, replacement: `${source('../../libs/domain/src/')}$1.ts` },
    ],
  },
  define: {
    // The gallery of states is for development; a build has it only when asked.
    __GALLERY__: JSON.stringify(mode === 'development' || process.env['VITE_GALLERY'] === '1'),
  },
  build: {
    // Not the name of any page, or the server's page fallback and its files would collide.
    assetsDir: 'static',
    // The content security policy admits no data: fonts or scripts.
    assetsInlineLimit: 0,
    target: 'es2022',
    sourcemap: false,
    cssCodeSplit: true,
  },
  server: {
    host: '127.0.0.1',
    proxy: {
      '/api': { target: process.env['STRUTBOOK_API'] ?? 'http://127.0.0.1:4180', changeOrigin: false },
    },
  },
}));

// Vite reads its settings from the default export alone.
export default config;
