import { describe, expect, it } from '@jest/globals';
import type { EntryReasonCode } from '../../work/entry.js';
import type { OrderSnapshot, SignerSnapshot } from '../work-snapshot.js';
import { capture, codes, entry, signature, step, words } from './example-steps.js';

describe('what is held against the accounts', () => {
  // EASA SIB 2015-15: an opened cowl is an item until it is closed.
  it('is a connection, cowl, panel or safety item that is open', () => {
    for (const kind of ['connection', 'cowl', 'panel', 'safety'] as const) {
      const items = [{ key: 'i', kind, name: 'Fan cowl', side: 'left' } as const];
      const opening = step({ of: { opens: ['i'] } });
      const closing = step({ id: 'step-13', of: { key: 'close', number: 13, closes: ['i'] } });
      expect(codes({ items, steps: [opening] })).toEqual([['ITEM_OPEN', 'blocking']]);
      expect(codes({ items, steps: [opening, closing] })).toEqual([]);
      const undone = { ...closing, signatures: [signature({ undone: true })] };
      expect(codes({ items, steps: [opening, undone] })).toEqual([
        ['STEP_UNSIGNED', 'blocking'],
        ['ITEM_OPEN', 'blocking'],
      ]);
    }
  });

  // AAIB AAR 3/96: a blank left inside an oil line.
  it('is blanks, tags or tools of which fewer came back: 14 out, 13 in', () => {
    const counted = (direction: 'out' | 'in', number: string) =>
      step({
        id: `step-${direction}`,
        of: { captures: [capture({ kind: 'count', what: 'blanks', direction })] },
        entries: [entry({ kind: 'count', number })],
      });
    expect(words({ steps: [counted('out', '14'), counted('in', '13')] })).toEqual([
      expect.objectContaining({ record: 'Count of blanks', reason: 'Out: 14. In: 13.' }),
    ]);
    expect(codes({ steps: [counted('out', '14'), counted('in', '14')] })).toEqual([]);
    expect(codes({ steps: [counted('out', '14')] })).toEqual([['COUNTS_DIFFER', 'blocking']]);
  });
});

describe('what is held against the order', () => {
  const order = (change: Partial<OrderSnapshot> = {}): OrderSnapshot => ({
    id: 'o',
    place: 'engine at position 2',
    positionNumber: 2,
    slotId: 's',
    outgoing: { id: 'e1', serial: 'E-1' },
    incoming: { id: 'e2', serial: 'E-2' },
    made: { outgoingId: 'e1', incomingId: 'e2' },
    installedNow: { id: 'e2', serial: 'E-2' },
    ...change,
  });
  const with_ = (change: Partial<OrderSnapshot> = {}) => codes({ orders: [order(change)] });

  it('is a change that was not made, or only half', () => {
    expect(with_()).toEqual([]);
    expect(with_({ made: null })).toEqual([['ORDER_NOT_MADE', 'blocking']]);
    expect(with_({ made: { outgoingId: 'e1', incomingId: null }, installedNow: null })).toEqual([
      ['ORDER_NOT_MADE', 'blocking'],
    ]);
  });

  it('is another serial than ordered, put in by this package or there now', () => {
    expect(with_({ made: { outgoingId: 'e1', incomingId: 'e9' } })).toEqual([['ORDER_DIFFERS', 'blocking']]);
    expect(with_({ installedNow: { id: 'e9', serial: 'E-9' } })).toEqual([['ORDER_DIFFERS', 'blocking']]);
    expect(with_({ installedNow: null })).toEqual([['ORDER_DIFFERS', 'blocking']]);
    expect(words({ orders: [order({ installedNow: { id: 'e9', serial: 'E-9' } })] })[0]).toMatchObject({
      record: 'Order for the engine at position 2',
      reason: 'Ordered: serial E-1 off, serial E-2 on. Serial E-9 is there now.',
    });
  });

  it('is a plate read at another position or of another serial, and one the amended order no longer names', () => {
    const plate = (serialNumber: string, reasons: readonly EntryReasonCode[] = []) =>
      step({
        of: { captures: [capture({ kind: 'component-on' })] },
        entries: [
          entry({ kind: 'component-on', serialNumber, partNumber: null, positionNumber: '2' }, reasons),
        ],
      });
    const orders = [order()];
    expect(codes({ orders, steps: [plate('E-2')] })).toEqual([]);
    // As it was judged when it was read: capitals and spaces make no other serial.
    expect(codes({ orders, steps: [plate(' e-2 ')] })).toEqual([]);
    expect(codes({ orders, steps: [plate('E-2', ['POSITION_DIFFERS'])] })).toEqual([
      ['ORDER_DIFFERS', 'blocking'],
    ]);
    expect(codes({ orders, steps: [plate('E-3')] })).toEqual([['ORDER_DIFFERS', 'blocking']]);
  });
});

describe('what is held against who signed', () => {
  it('is a day of signing that no authorisation covers, of signatures that count', () => {
    const signer = (change: Partial<SignerSnapshot> = {}): SignerSnapshot => ({
      signatureId: 'done-1',
      personId: 'ann',
      name: 'Ann Able',
      scope: 'work',
      on: '2026-03-01',
      authorised: false,
      ...change,
    });
    const steps = [step()];
    expect(codes({ steps, signers: [signer(), signer()] })).toEqual([['SIGNER_NOT_AUTHORISED', 'blocking']]);
    expect(codes({ steps, signers: [signer({ authorised: true })] })).toEqual([]);
    expect(codes({ steps, signers: [signer({ signatureId: 'undone' })] })).toEqual([]);
    expect(words({ steps, signers: [signer()] })[0]?.reason).toBe(
      'Signed work on 2026-03-01, and no authorisation that stands covers that day.',
    );
  });
});
