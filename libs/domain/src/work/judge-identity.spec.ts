import { describe, expect, it } from '@jest/globals';
import { judgeComponent, judgePapers, type OrderedFacts, type RegisterFacts } from './judge-identity.js';

const ordered: OrderedFacts = {
  outgoingSerial: 'E-1001',
  outgoingPartNumber: 'V840-2',
  incomingSerial: 'E-2002',
  incomingPartNumber: 'V840-3',
  positionNumber: 2,
};
const register: RegisterFacts = {
  partNumber: 'V840-2',
  description: 'Engine',
  place: 'Position 2 of ZZ-417',
  serviceable: true,
};
const codes = ({ reasons }: { readonly reasons: readonly { readonly code: string }[] }) =>
  reasons.map((reason) => reason.code);

describe('a component that comes off', () => {
  const off = (
    typed: { serialNumber?: string; partNumber?: string | null; positionNumber?: string | null },
    facts: { ordered?: OrderedFacts | null; register?: RegisterFacts | null } = {},
  ) =>
    judgeComponent(
      {
        kind: 'component-off',
        serialNumber: 'E-1001',
        partNumber: null,
        positionNumber: '2',
        ...typed,
      },
      { ordered, register, ...facts },
    );

  it('is the one of the order, and tells what the register has for it', () => {
    expect(off({})).toEqual({
      verdict: 'accepted',
      reasons: [],
      computed: { partNumber: 'V840-2', description: 'Engine', place: 'Position 2 of ZZ-417' },
    });
    expect(codes(off({ serialNumber: ' e-1001 ', partNumber: 'v840-2', positionNumber: ' 2 ' }))).toEqual([]);
  });

  it('is rejected when serial, position or part number differ', () => {
    expect(off({ serialNumber: 'E-2002' }).reasons).toEqual([
      { code: 'SERIAL_DIFFERS', detail: { typed: 'E-2002', expected: 'E-1001' } },
    ]);
    expect(off({ positionNumber: '1' }).reasons).toEqual([
      { code: 'POSITION_DIFFERS', detail: { typed: '1', expected: 2 } },
    ]);
    expect(off({ partNumber: 'V840-9' }).reasons).toEqual([
      { code: 'PART_NUMBER_DIFFERS', detail: { typed: 'V840-9', expected: 'V840-2', by: 'order' } },
    ]);
    expect(codes(off({ serialNumber: 'E-1002', positionNumber: '1', partNumber: 'X' }))).toEqual([
      'SERIAL_DIFFERS',
      'PART_NUMBER_DIFFERS',
      'POSITION_DIFFERS',
    ]);
  });

  it('says at which position, where the order names one', () => {
    for (const positionNumber of [null, '', 'two', '2.0'])
      expect(codes(off({ positionNumber }))).toEqual(['POSITION_DIFFERS']);
    expect(codes(off({ positionNumber: null }, { ordered: { ...ordered, positionNumber: null } }))).toEqual(
      [],
    );
  });

  it('has a serial, and the register knows it', () => {
    expect(codes(off({ serialNumber: ' ' }, { register: null }))).toEqual(['EMPTY']);
    expect(codes(off({}, { register: null }))).toEqual(['NOT_IN_REGISTER']);
  });

  it('may be unserviceable', () => {
    expect(codes(off({}, { register: { ...register, serviceable: false } }))).toEqual([]);
  });

  it('is compared with the register alone where no order names it', () => {
    expect(codes(off({ serialNumber: 'A-5', partNumber: 'V840-2' }, { ordered: null }))).toEqual([]);
    expect(off({ partNumber: 'A' }, { ordered: null }).reasons).toEqual([
      { code: 'PART_NUMBER_DIFFERS', detail: { typed: 'A', expected: 'V840-2', by: 'register' } },
    ]);
    const open = { ...ordered, outgoingSerial: null, outgoingPartNumber: null };
    expect(codes(off({ serialNumber: 'A-5' }, { ordered: open }))).toEqual([]);
  });
});

describe('a component that goes on', () => {
  const on = (serialNumber: string, serviceable: boolean | null) =>
    judgeComponent(
      { kind: 'component-on', serialNumber, partNumber: 'V840-3', positionNumber: '2' },
      { ordered, register: { ...register, partNumber: 'V840-3', serviceable } },
    );

  it('is the incoming one of the order', () => {
    expect(codes(on('E-2002', true))).toEqual([]);
    expect(codes(on('E-1001', true))).toEqual(['SERIAL_DIFFERS']);
  });

  it('is not one the register has as unserviceable; where nobody recorded it, the papers tell', () => {
    expect(codes(on('E-2002', false))).toEqual(['TAGGED_UNSERVICEABLE']);
    expect(codes(on('E-2002', null))).toEqual([]);
  });
});

describe('plate and papers', () => {
  const judge = (typed: Partial<Parameters<typeof judgePapers>[0]>, order = ordered) =>
    codes(
      judgePapers(
        {
          kind: 'papers',
          plateSerial: 'E-2002',
          documentSerial: 'E-2002',
          documentNumber: 'F1-77',
          tag: 'serviceable',
          ...typed,
        },
        order,
      ),
    );

  it('agree with each other and with the order', () => {
    expect(judge({})).toEqual([]);
    expect(judge({ documentSerial: 'E-2O02' })).toEqual(['PAPERS_DIFFER']);
    expect(judge({ plateSerial: 'E-2003', documentSerial: 'E-2003' })).toEqual(['SERIAL_DIFFERS']);
    expect(judge({}, { ...ordered, incomingSerial: null })).toEqual([]);
  });

  it('are complete', () => {
    expect(judge({ documentNumber: '' })).toEqual(['PAPERS_MISSING']);
    expect(judge({ documentSerial: ' ' })).toEqual(['PAPERS_MISSING']);
    expect(judge({ plateSerial: '' })).toEqual(['PAPERS_MISSING']);
  });

  it('with an unserviceable tag are rejected', () => {
    expect(judge({ tag: 'unserviceable' })).toEqual(['TAGGED_UNSERVICEABLE']);
  });
});
