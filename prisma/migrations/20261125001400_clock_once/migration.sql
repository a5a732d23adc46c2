-- As before; the clocks are read once for all that is counted by them, not once for each.
CREATE OR REPLACE FUNCTION due_points_passed(p_operator int, p_airframe uuid, p_counts counts) RETURNS jsonb
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_passed jsonb;
BEGIN
  WITH clock AS MATERIALIZED (
    SELECT * FROM clock_now WHERE operator_id = p_operator AND airframe_id = p_airframe
  )
  SELECT jsonb_agg(jsonb_build_object('componentId', d.component_id, 'airframeId', d.airframe_id, 'positionId', d.position_id,
           'requirementId', d.requirement_id, 'engineId', d.engine_id,
           'dimension', CASE reading.dimension WHEN 'flights' THEN 'cycles' ELSE reading.dimension END,
           'dueAt', d.due_at, 'reading', reading.now, 'denominator', reading.denominator)
         ORDER BY d.due_at - reading.now) INTO v_passed
    FROM (
      SELECT n.carrier_id, 'minutes' AS dimension, NULL::uuid AS rule_id, n.minutes AS now, p_counts.minutes AS added,
             1 AS denominator
        FROM clock n
      UNION ALL
      SELECT n.carrier_id, 'flights', NULL::uuid, n.flights, p_counts.flights, 1
        FROM clock n
      UNION ALL
      SELECT n.carrier_id, 'cycles', r.id,
             r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
               + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs,
             r.per_flight * p_counts.flights + r.per_landing * p_counts.landings
               + r.per_touch_and_go * p_counts.touch_and_goes + r.per_start * p_counts.starts
               + r.per_aborted_take_off * p_counts.aborted_take_offs,
             r.denominator
        FROM clock n
        JOIN airframe f ON f.operator_id = p_operator AND f.id = p_airframe
        JOIN cycle_rule r ON r.operator_id = p_operator
         AND (r.airframe_type_id IS NULL OR r.airframe_type_id = f.airframe_type_id)
       WHERE n.kind = 'position'
    ) AS reading
    CROSS JOIN LATERAL (
      SELECT p.* FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = reading.carrier_id AND p.dimension = reading.dimension
         AND reading.dimension IN ('minutes', 'flights')
         AND p.due_at > reading.now - reading.added AND p.due_at <= reading.now
      UNION ALL
      SELECT p.* FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = reading.carrier_id AND p.dimension = 'cycles'
         AND p.cycle_rule_id = reading.rule_id AND p.due_at > reading.now - reading.added AND p.due_at <= reading.now
      OFFSET 0
    ) AS d
   WHERE d.requirement_id IS NULL OR NOT EXISTS (
     SELECT FROM requirement q JOIN due_point o ON o.operator_id = q.operator_id AND o.requirement_id = q.id
      WHERE q.operator_id = p_operator AND q.id = d.requirement_id AND q.combine = 'last' AND o.id <> d.id
        AND (o.component_id, o.airframe_id, o.position_id) IS NOT DISTINCT FROM (d.component_id, d.airframe_id, d.position_id));
  RETURN coalesce(v_passed, '[]'::jsonb);
END $$;
