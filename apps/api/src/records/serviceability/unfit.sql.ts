import { type TagStatus, type UnfitComponent, unfitBecause } from '@strutbook/domain/serviceability/unfit.js';
import { Prisma } from '../../platform/database/generated/client.js';
import type { StructureAsk } from '../stays/structure.sql.js';

/** A component with its newest tag, or a shop visit it was not returned from. */
export interface UnfitRow {
  readonly componentId: string;
  readonly status: TagStatus | null;
  readonly tagNumber: string | null;
  readonly openVisit: string | null;
}

/** As JSON, a row of each of these components that something may be held against, now (null) or at an instant. */
export function unfitRows({ operatorId, componentIds, at }: StructureAsk): Prisma.Sql {
  const by = (column: string) =>
    at === null ? Prisma.empty : Prisma.sql`AND ${Prisma.raw(column)} <= ${at}::timestamptz`;
  return Prisma.sql`(SELECT coalesce(json_agg(json_build_object('componentId', held.component_id, 'status', held.status,
      'tagNumber', held.tag_number, 'openVisit', held.order_reference)), '[]')
    FROM (
      (SELECT DISTINCT ON (g.component_id) g.component_id, g.status, g.tag_number, NULL::text AS order_reference
         FROM serviceability_tag g
        WHERE g.operator_id = ${operatorId}::int AND g.component_id = ANY (${componentIds}) AND g.voided_seq IS NULL ${by('g.at')}
        ORDER BY g.component_id, g.at DESC, g.recorded_seq DESC)
      UNION ALL
      (SELECT v.component_id, NULL, NULL, v.order_reference
         FROM shop_visit v
        WHERE v.operator_id = ${operatorId}::int AND v.component_id = ANY (${componentIds}) AND v.voided_seq IS NULL ${by('v.sent_at')}
          AND NOT EXISTS (SELECT FROM shop_return r WHERE r.operator_id = v.operator_id AND r.visit_id = v.id
                             AND r.voided_seq IS NULL ${by('r.returned_at')}))
    ) AS held)`;
}

/** What is held against each component that something is held against. Total. */
export function unfitOf(rows: readonly UnfitRow[]): ReadonlyMap<string, UnfitComponent> {
  const found = new Map<string, UnfitComponent>();
  for (const componentId of new Set(rows.map((row) => row.componentId))) {
    const own = rows.filter((row) => row.componentId === componentId);
    const tagged = own.find((row) => row.status !== null);
    const why = unfitBecause({
      tag:
        tagged === undefined || tagged.status === null
          ? null
          : { status: tagged.status, tagNumber: tagged.tagNumber ?? '' },
      openVisit: own.find((row) => row.openVisit !== null)?.openVisit ?? null,
    });
    if (why !== null) found.set(componentId, why);
  }
  return found;
}
