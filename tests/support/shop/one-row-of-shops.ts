/** What the rows are about, as SQL has it. */
interface RowsOf {
  readonly component: string | undefined;
  readonly location: string | undefined;
  readonly slot: string | undefined;
  readonly at: string;
  readonly id: (n: number) => string;
}

/** A row each of a shop visit, its return, a change in it, a tag and a preservation: table, columns, values. */
export function shopRows({
  component,
  location,
  slot,
  at,
  id,
}: RowsOf): readonly (readonly [string, string, string])[] {
  return [
    [
      'shop_visit',
      'id, component_id, location_id, order_reference, workscope, sent_at, build, recorded_seq',
      `${id(60)}, ${component}, ${location}, 'O-1', 'W', ${at}, '{}', 1`,
    ],
    [
      'shop_return',
      'id, visit_id, component_id, location_id, returned_at, report, work_done, build, objections, recorded_seq',
      `${id(61)}, ${id(60)}, ${component}, ${location}, '2025-01-02 00:00Z', 'R', 'W', '{}', '[]', 1`,
    ],
    [
      'shop_change',
      'id, return_id, slot_id, outgoing_id, removed_to_id, at, reason, recorded_seq',
      `${id(62)}, ${id(61)}, ${slot}, ${component}, ${location}, ${at}, 'R', 1`,
    ],
    [
      'serviceability_tag',
      'id, component_id, status, tag_number, reason, issued_by, at, recorded_seq',
      `${id(63)}, ${component}, 'unserviceable', 'T-1', 'R', 'B', ${at}, 1`,
    ],
    [
      'preservation',
      'id, component_id, at, method, good_until, document, recorded_seq',
      `${id(64)}, ${component}, ${at}, 'M', '2025-06-01', 'D', 1`,
    ],
  ];
}
