import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The checkout's root folder. */
export const root = fileURLToPath(new URL('../../..', import.meta.url));

/** A path below the checkout's root. */
export const inRoot = (...parts) => path.join(root, ...parts);

/** What the launcher remembers between builds; lost together with node_modules, as it must be. */
export const memoryFolder = inRoot('node_modules', '.strutbook');
