/** A package of 40 steps on the first airframe, with something held against it of most kinds. */
const torque = {
  kind: 'torque',
  key: 'bolts',
  label: 'Mount bolts',
  points: ['1', '2', '3', '4'],
  low: '90',
  high: '110',
  unit: 'N·m',
  thread: 'dry',
  runOn: { rule: 'none', low: null, high: null },
  binds: 'range',
};
const counted = (direction) => ({ kind: 'count', key: 'blanks', label: 'Blanks', what: 'blanks', direction });
const check = { kind: 'check', key: 'seen', label: 'Seen' };

/** Connections parted in steps 3 to 12 and joined in steps 21 to 29: the last one stays open. */
const items = Array.from({ length: 10 }, (_, index) => ({
  key: `line-${index + 3}`,
  kind: 'connection',
  name: `Line ${index + 3}`,
  side: null,
}));

const steps = Array.from({ length: 40 }, (_, index) => {
  const number = index + 1;
  const captures = number === 1 ? [counted('out')] : number === 2 ? [counted('in')] : [torque, check];
  return {
    key: `step-${number}`,
    number,
    group: 'g',
    title: `Do the thing that is number ${number}`,
    text: 'How it is done, in the words of the approved data, about as long as such a text is in a real procedure.',
    cautions: ['Mind the edge.'],
    source: { document: 'Bench manual', revision: '7' },
    waitsFor: number === 1 ? [] : [`step-${number - 1}`],
    inspection: number % 4 === 3 ? 'independent' : 'none',
    captures,
    opens: number >= 3 && number <= 12 ? [`line-${number}`] : [],
    closes: number >= 21 && number <= 29 ? [`line-${number - 18}`] : [],
    moves: null,
  };
});

const entryOf = ({ number }, capture, point) => {
  const rejected = number === 38 && point === '2';
  const typed =
    capture.kind === 'torque'
      ? {
          kind: 'torque',
          point,
          indication: '100',
          unit: 'N·m',
          method: 'set-value',
          runOn: null,
          extension: null,
        }
      : capture.kind === 'count'
        ? { kind: 'count', number: number === 1 ? '14' : '13' }
        : { kind: 'check', seen: true };
  const reasons = rejected
    ? [{ code: 'ABOVE_RANGE', detail: { what: 'Torque', value: '120 N·m', low: '90 N·m', high: '110 N·m' } }]
    : [];
  return {
    capture: capture.key,
    point,
    kind: capture.kind,
    typed,
    judged: { verdict: rejected ? 'rejected' : 'accepted', reasons, computed: {} },
  };
};

const entries = steps.flatMap((step) =>
  step.captures.flatMap((capture) =>
    (capture.kind === 'torque' ? capture.points : [null]).map((point) => ({
      step: step.number,
      tool: capture.kind === 'torque' ? (step.number === 37 ? 'late' : 'good') : null,
      ...entryOf(step, capture, point),
    })),
  ),
);

const statements = [
  [
    `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, licence, password_hash)
     SELECT 1, md5(n)::uuid, n, n, ARRAY['technician', 'inspector'], 'L-' || n, 'no sign-in' FROM unnest(ARRAY['ann', 'ben']) n`,
  ],
  [
    `INSERT INTO authorisation (operator_id, id, person_id, scope, from_on, reference, recorded_seq)
     SELECT 1, md5(n || scope)::uuid, md5(n)::uuid, scope, '2016-01-01', 'bench', 0
       FROM unnest(ARRAY['ann', 'ben']) n, unnest(ARRAY['work', 'inspection']) scope`,
  ],
  [
    `INSERT INTO tool (operator_id, id, serial_number, description, kind, unit, range_low, range_high, deviation)
     SELECT 1, md5(n)::uuid, n, 'Wrench', 'torque-wrench', 'N·m', '20', '200', '3' FROM unnest(ARRAY['good', 'late']) n`,
  ],
  [
    `INSERT INTO tool_calibration (operator_id, id, tool_id, calibrated_on, due_on, certificate, recorded_seq)
     VALUES (1, md5('k1')::uuid, md5('good')::uuid, '2022-01-01', '2023-01-01', 'bench', 0),
            (1, md5('k2')::uuid, md5('late')::uuid, '2021-01-01', '2022-01-01', 'bench', 0)`,
  ],
  [
    `INSERT INTO procedure (operator_id, id, code, revision, title, kind, document, document_revision, content, content_hash, recorded_seq)
     VALUES (1, md5('procedure')::uuid, 'BENCH', '1', 'Engine change', 'engine-change', 'Bench manual', '7', $1, sha256($2), 0)`,
    () => {
      const content = JSON.stringify({
        groups: [{ key: 'g', letter: 'A', title: 'All', lane: 'both', place: 'stand' }],
        items,
        steps,
      });
      return [content, Buffer.from(content)];
    },
  ],
  [
    `INSERT INTO work_package (operator_id, id, number, kind, title, airframe_id, opened_at, procedure_id, recorded_seq)
     VALUES (1, md5('package')::uuid, 'EC-1', 'engine-change', 'Engine change', md5('a1')::uuid, '2022-11-07Z', md5('procedure')::uuid, 0)`,
  ],
  [
    `INSERT INTO work_step (operator_id, id, package_id, key, number, definition, content_hash, recorded_seq)
     SELECT 1, md5('step' || (d ->> 'number'))::uuid, md5('package')::uuid, d ->> 'key', (d ->> 'number')::int, d::text, sha256(convert_to(d ->> 'key', 'UTF8')), 0
       FROM json_array_elements($1::json) d`,
    () => [JSON.stringify(steps)],
  ],
  [
    `INSERT INTO step_entry (operator_id, id, package_id, step_id, capture, point, kind, typed, judged, verdict, tool_id, person_id,
       person_name, entered_at, recorded_seq)
     SELECT 1, md5('entry' || n)::uuid, md5('package')::uuid, md5('step' || (e ->> 'step'))::uuid, e ->> 'capture', e ->> 'point', e ->> 'kind',
            (e -> 'typed')::text, (e -> 'judged')::text, e -> 'judged' ->> 'verdict', md5(e ->> 'tool')::uuid, md5('ann')::uuid, 'ann',
            '2022-11-07 10:00Z', n
       FROM json_array_elements($1::json) WITH ORDINALITY AS listed (e, n)`,
    () => [JSON.stringify(entries)],
  ],
  [
    `INSERT INTO signature (operator_id, id, person_id, person_name, licence, meaning, statement, content_hash, method, signed_at, recorded_seq)
     SELECT 1, md5('sig' || kind || n)::uuid, md5(who)::uuid, who, 'L', kind, 'Done.', sha256('x'), 'password', '2022-11-07 11:00Z', 1000 + n
       FROM generate_series(1, 39) n, (VALUES ('step', 'ann'), ('inspection', 'ben')) AS as_what (kind, who)
      WHERE kind = 'step' OR (n % 4 = 3 AND n < 39)`,
  ],
  [
    `INSERT INTO step_signature (operator_id, id, package_id, step_id, signature_id, meaning, content_hash, performed_at, recorded_seq)
     SELECT 1, md5('done' || number)::uuid, package_id, id, md5('sigstep' || number)::uuid, 'done', content_hash, '2022-11-07 11:00Z', 1000 + number
       FROM work_step WHERE number < 40`,
  ],
  [
    `INSERT INTO step_signature (operator_id, id, package_id, step_id, signature_id, meaning, covers_id, content_hash, performed_at, recorded_seq)
     SELECT 1, md5('seen' || number)::uuid, package_id, id, md5('siginspection' || number)::uuid, 'inspection', md5('done' || number)::uuid,
            content_hash, '2022-11-07 11:00Z', 1000 + number
       FROM work_step WHERE number % 4 = 3 AND number < 39`,
  ],
  [
    `INSERT INTO ordered_change (operator_id, id, package_id, slot_id, incoming_id, reason, recorded_seq)
     SELECT 1, md5('order')::uuid, md5('package')::uuid, md5('s' || id)::uuid, md5('e' || id)::uuid, 'bench', 0
       FROM position WHERE airframe_id = md5('a1')::uuid AND number = 1`,
  ],
  [
    `INSERT INTO package_change (operator_id, id, package_id, slot_id, position_id, incoming_id, at, boundary_kind, boundary_text, reason, counters, recorded_seq)
     SELECT 1, md5('change')::uuid, md5('package')::uuid, md5('s' || id)::uuid, id, md5('e' || id)::uuid, '2022-11-07 09:00Z', 'instant', 'x', 'bench', '{}', 0
       FROM position WHERE airframe_id = md5('a1')::uuid AND number = 1`,
  ],
  ['ANALYZE'],
];

/** Adds the package and all it rests on to a filled database, as its superuser. */
export async function fillPackage(client) {
  for (const [sql, values] of statements) await client.query(sql, values?.());
}
