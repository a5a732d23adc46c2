import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import type { Structure } from '../stays/structure.js';
import { nameOfPosition } from './package-requirements.js';
import type { RequirementSubject } from './requirement-status.js';

interface Named extends RequirementSubject {
  readonly id: string;
  /** What it is called: 'ZZ-101', 'ZZ-101 position 1', 'Disk D77'. */
  readonly name: string;
  readonly manufacturedOn: string | null;
  /** Since when it is installed, or what is at the position; null while nothing is. */
  readonly installedAt: Date | null;
}

/** What a requirement may be held against, as it is at an instant. */
export type Subject =
  | (Named & {
      readonly kind: 'airframe';
      readonly serialNumber: string;
      readonly airframeTypeId: string;
      readonly dayZone: string;
    })
  | (Named & {
      readonly kind: 'position';
      readonly ofAirframeId: string;
      readonly number: number;
      readonly airframeTypeId: string;
      readonly dayZone: string;
    })
  | (Named & {
      readonly kind: 'component';
      readonly componentKind: string;
      readonly partNumber: string;
      readonly serialNumber: string;
      readonly engineModelId: string | null;
      /** Why nothing is held against it any more; null while it is in service or can be. */
      readonly gone: 'SCRAPPED' | 'TRANSFERRED_OUT' | null;
    });

/** What to look at: airframes with their positions, and components. */
export interface Scope {
  readonly airframeIds: readonly string[];
  readonly componentIds: readonly string[];
}

/** The subjects of a scope at an instant (null: now), in a constant number of statements. */
export async function loadSubjects(
  tx: Tx,
  operatorId: number,
  structure: Structure,
  { airframeIds, componentIds }: Scope,
  at: Date | null,
): Promise<Subject[]> {
  return [
    ...(airframeIds.length === 0 ? [] : await onAirframes(tx, operatorId, structure, airframeIds, at)),
    ...(componentIds.length === 0 ? [] : await components(tx, operatorId, structure, componentIds, at)),
  ];
}

async function onAirframes(
  tx: Tx,
  operatorId: number,
  structure: Structure,
  airframeIds: readonly string[],
  at: Date | null,
): Promise<Subject[]> {
  const airframes = await tx.airframe.findMany({
    where: { operatorId, id: { in: [...airframeIds] } },
    include: { positionByAirframe: { orderBy: { number: 'asc' } } },
    orderBy: { registration: 'asc' },
  });
  const slots = await structure.onAirframes(tx, operatorId, airframeIds, at);
  return airframes.flatMap(({ id, registration, airframeTypeId, dayZone, ...airframe }): Subject[] => {
    const manufacturedOn = dayOf(airframe.manufacturedOn);
    const base = { airframeTypeId, dayZone, manufacturedOn, componentId: null };
    return [
      {
        ...base,
        kind: 'airframe',
        serialNumber: airframe.serialNumber,
        id,
        airframeId: id,
        positionId: null,
        name: registration,
        installedAt: null,
      },
      ...airframe.positionByAirframe.map(({ id: positionId, number, kind }) => ({
        ...base,
        kind: 'position' as const,
        id: positionId,
        ofAirframeId: id,
        airframeId: null,
        positionId,
        number,
        name: nameOfPosition(registration, number),
        installedAt:
          slots.find((slot) => slot.positionId === positionId && slot.slotKind === kind)?.fromAt ?? null,
      })),
    ];
  });
}

async function components(
  tx: Tx,
  operatorId: number,
  structure: Structure,
  componentIds: readonly string[],
  at: Date | null,
): Promise<Subject[]> {
  const rows = await tx.component.findMany({
    where: { operatorId, id: { in: [...componentIds] } },
    orderBy: [{ serialNumber: 'asc' }, { id: 'asc' }],
  });
  const where = await structure.whereAre(tx, operatorId, componentIds, at);
  const places = await tx.location.findMany({
    where: { operatorId, kind: { in: ['scrapped', 'transferred-out'] } },
    select: { id: true, kind: true },
  });
  const goneTo = new Map(places.map((place) => [place.id, place.kind]));
  return rows.map((row) => {
    const place = where.get(row.id);
    const left = place?.locationId == null ? undefined : goneTo.get(place.locationId);
    return {
      kind: 'component',
      id: row.id,
      airframeId: null,
      positionId: null,
      componentId: row.id,
      name: `${row.description} ${row.serialNumber}`,
      componentKind: row.kind,
      partNumber: row.partNumber,
      serialNumber: row.serialNumber,
      engineModelId: row.engineModelId,
      manufacturedOn: dayOf(row.manufacturedOn),
      installedAt: place === undefined || place.slotId === null ? null : place.fromAt,
      gone: left === undefined ? null : left === 'scrapped' ? 'SCRAPPED' : 'TRANSFERRED_OUT',
    };
  });
}

function dayOf(date: Date | null): string | null {
  return date === null ? null : dayToWire(date);
}
