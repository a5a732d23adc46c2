import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Answer, HttpClient } from '../../support/http-client.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { engineChange, openShop, type Shop } from '../../support/work/shop.js';
import { type ShownStep, stepOf, workOf } from '../../support/work/work-desk.js';

let shop: Shop;
let stepId: string;

beforeAll(async () => {
  shop = await openShop();
  const { id } = await engineChange(shop);
  stepId = stepOf(await workOf(shop.technician, id), 'leak-check').id;
}, 120_000);

afterAll(() => shop?.close(), 30_000);

// The shortest beginning of each kind, and some bytes after it.
const JPEG = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(500, 7)]);
const PNG = Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), Buffer.alloc(500, 7)]);

const send = (
  bytes: Uint8Array | object,
  {
    type = 'image/jpeg',
    query = 'capture=picture&fileName=joint.jpg',
    client = shop.technician,
  }: { type?: string; query?: string; client?: HttpClient } = {},
): Promise<Answer<ShownStep>> =>
  client.post<ShownStep>(`/api/steps/${stepId}/photos?${query}`, bytes, {
    headers: { 'content-type': type },
  });

describe('a picture', () => {
  it('is kept byte by byte and shown as what it is', async () => {
    const shown = done(await send(JPEG));
    const entry = shown.entries.at(-1);
    expect(entry?.typed).toEqual({
      kind: 'photo',
      fileName: 'joint.jpg',
      sha256: createHash('sha256').update(JPEG).digest('hex'),
    });
    const picture = await shop.planner.get(`/api/step-photos/${entry?.photoId ?? ''}`);
    expect(Buffer.from(picture.bytes).equals(JPEG)).toBe(true);
    expect(picture.headers.get('content-type')).toBe('image/jpeg');
    expect(picture.headers.get('x-content-type-options')).toBe('nosniff');
    expect(picture.headers.get('content-security-policy')).toBe("default-src 'none'; sandbox");
    expect(picture.headers.get('cache-control')).toBe('no-store');
  });

  it('is what its bytes are, whatever it is called', async () => {
    const shown = done(await send(PNG));
    const picture = await shop.planner.get(`/api/step-photos/${shown.entries.at(-1)?.photoId ?? ''}`);
    expect(picture.headers.get('content-type')).toBe('image/png');
  });

  it('is refused when its bytes are none', async () => {
    const page = Buffer.from('<html><script>alert(1)</script></html>');
    for (const bytes of [page, Buffer.alloc(0)])
      expect(problemOf(await send(bytes))).toMatchObject({ status: 400, fields: [{ field: 'body' }] });
  });

  it('is refused as another kind of content, and above 8 MiB', async () => {
    expect(problemOf(await send({ picture: 'none' }, { type: 'application/json' })).status).toBe(415);
    expect(problemOf(await send(JPEG, { type: 'image/svg+xml' })).status).toBe(415);
    const large = Buffer.concat([JPEG, Buffer.alloc(8 * 1024 * 1024)]);
    expect(problemOf(await send(large)).status).toBe(413);
    const elsewhere = await shop.planner.post('/api/packages', JPEG, {
      headers: { 'content-type': 'image/jpeg' },
    });
    expect(problemOf(elsewhere).status).toBe(415);
  });

  it('is refused for a capture that takes none, and with a folder in its name', async () => {
    expect(problemOf(await send(JPEG, { query: 'capture=leaks&fileName=a.jpg' })).fields?.[0]?.field).toBe(
      'capture',
    );
    expect(
      problemOf(await send(JPEG, { query: 'capture=picture&fileName=..%2Fa.jpg' })).fields?.[0]?.field,
    ).toBe('fileName');
  });

  it('is sent by those who work in steps only', async () => {
    expect(problemOf(await send(JPEG, { client: shop.planner })).status).toBe(403);
  });
});
