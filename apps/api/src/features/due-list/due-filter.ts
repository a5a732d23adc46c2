import { refuse } from '../../platform/problems/refusal.error.js';
import type { DueFilterDto } from './due-query.dto.js';

/** Conditions on rows `n` of the list, and the values of their parameters. */
export interface DueConditions {
  /** Of which things the list is: an airframe, a position, an engine or a part. */
  readonly scope: readonly string[];
  /** What narrows it further. */
  readonly filters: readonly string[];
  readonly values: readonly unknown[];
}

/**
 * The conditions that a question sets, with parameters numbered from `first` on; `componentIds` are the component asked
 * for and all beneath it. Only closed words stand in the text. Total.
 */
export function dueConditions(
  ask: DueFilterDto,
  { componentIds, first }: { readonly componentIds: readonly string[] | null; readonly first: number },
): DueConditions {
  const values: unknown[] = [];
  const given = (value: unknown): string => {
    values.push(value);
    return `$${first + values.length - 1}`;
  };
  const scope = [
    ...(ask.airframeId === undefined ? [] : [`n.airframe_id = ${given(ask.airframeId)}::uuid`]),
    ...(ask.positionId === undefined ? [] : [`n.position_id = ${given(ask.positionId)}::uuid`]),
    ...(componentIds === null ? [] : [`n.component_id = ANY (${given([...componentIds])}::uuid[])`]),
  ];
  const within = [
    ...(ask.withinHours === undefined ? [] : [`n.left_minutes <= ${given(ask.withinHours * 60)}::bigint`]),
    ...(ask.withinCycles === undefined ? [] : [`n.left_cycles <= ${given(ask.withinCycles)}::bigint`]),
    ...(ask.withinDays === undefined ? [] : [`n.days <= ${given(ask.withinDays)}::bigint`]),
  ];
  const filters = [
    ...(ask.status === undefined ? [] : [`n.status = ANY (${given(ask.status)}::text[])`]),
    ...(ask.kind === undefined
      ? []
      : [`coalesce(n.requirement_kind, n.kind) = ANY (${given(ask.kind)}::text[])`]),
    ...(ask.partNumber === undefined ? [] : [`n.part_number ILIKE ${given(containing(ask.partNumber))}`]),
    ...(within.length === 0 ? [] : [`(${within.join(' OR ')})`]),
    ...(ask.search === undefined ? [] : [searched(given(containing(ask.search)))]),
  ];
  return { scope, filters, values };
}

const SEARCHED = [
  'n.serial_number',
  'n.part_number',
  'n.description',
  'n.code',
  'n.title',
  'n.registration',
  'n.engine_serial',
  'n.document',
] as const;

const searched = (pattern: string): string =>
  `(${SEARCHED.map((column) => `${column} ILIKE ${pattern}`).join(' OR ')})`;

/** A pattern for text that contains this one, whose own signs stand for themselves. Total. */
function containing(text: string): string {
  return `%${text.replaceAll(/[\\%_]/g, (sign) => `\\${sign}`)}%`;
}

/** Whether nothing but an airframe narrows the list. Total. */
export function isWholeList(ask: DueFilterDto): boolean {
  const { airframeId: _airframe, basis: _basis, days: _days, ...rest } = ask;
  return Object.values(rest).every((value) => value === undefined);
}

/** More than one of airframe, position and component. Refuses: INVALID_FIELDS. */
export function refuseTwoScopes({ airframeId, positionId, componentId }: DueFilterDto): void {
  const fields = Object.entries({ airframeId, positionId, componentId }).filter(
    ([, value]) => value !== undefined,
  );
  const [, second] = fields;
  if (second === undefined) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: second[0],
        reason: 'The list is of one airframe, one position or one component.',
        fix: 'Give one of the three.',
      },
    ],
  });
}
