// A directive that lowers a limit: looked at, then accepted as it was seen.
import { json } from './files.mjs';

/** Accepts the directive unless it is on record. */
export async function limitDirective(client, { models }) {
  const { rows, ...directive } = json('register/limit-directive.json');
  const known = await client.get('/api/life-limits');
  const isKnown = known.some(
    (limit) =>
      limit.document === directive.document && limit.revision === directive.revision && !limit.voided,
  );
  if (isKnown) return 'the directive is on record';
  const asked = {
    ...directive,
    rows: rows.map(({ engineModel, ...row }) => ({ ...row, engineModelId: models[engineModel] })),
  };
  const { digest, changes } = await client.post('/api/life-limits/preview', asked);
  await client.post('/api/life-limits/accept', { ...asked, digest });
  return `a directive that lowers ${changes.length} lives`;
}
