// npm run build [-- libs|api|client|web]
import { build } from './building/build.mjs';
import { ensureInstalled } from './building/install.mjs';
import { reporting } from './building/run.mjs';

await reporting(async () => {
  ensureInstalled();
  await build(process.argv[2]);
});
