-- Who may touch what: row-level security by operator, grants column by column, and facts that cannot be changed.
-- The roles owner, app and auditor are made before the first migration; migrations run as owner.

CREATE FUNCTION fact_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_before jsonb := to_jsonb(OLD);
  v_after jsonb;
  v_void text[] := ARRAY['voided_seq', 'void_reason'];
  v_end text[] := ARRAY['to_at', 'to_kind', 'to_text', 'end_reason', 'end_package_id', 'ended_seq'];
BEGIN
  IF TG_OP = 'UPDATE' THEN
    v_after := to_jsonb(NEW);
    IF v_before ->> 'voided_seq' IS NULL THEN
      -- voiding, once
      IF v_after ->> 'voided_seq' IS NOT NULL AND v_before - v_void = v_after - v_void THEN RETURN NEW; END IF;
      -- ending an open stay, once
      IF TG_TABLE_NAME = 'stay' AND v_before ->> 'to_at' IS NULL AND v_after ->> 'to_at' IS NOT NULL
         AND v_before - v_end = v_after - v_end THEN RETURN NEW; END IF;
    END IF;
  END IF;
  RAISE EXCEPTION 'facts are never changed or deleted: % on %', TG_OP, TG_TABLE_NAME USING ERRCODE = 'SB005';
END $$;

CREATE FUNCTION record_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  -- an act is opened with its key and given its answer once, in the same transaction
  IF TG_OP = 'UPDATE' AND TG_TABLE_NAME = 'act' THEN
    IF (to_jsonb(OLD) ->> 'status') IS NULL
       AND to_jsonb(OLD) - ARRAY['status', 'resource', 'version', 'body', 'number']
         = to_jsonb(NEW) - ARRAY['status', 'resource', 'version', 'body', 'number'] THEN RETURN NEW; END IF;
  END IF;
  RAISE EXCEPTION 'records are never changed or deleted: % on %', TG_OP, TG_TABLE_NAME USING ERRCODE = 'SB005';
END $$;

DO $$
DECLARE
  v_table text;
  v_facts text[] := ARRAY['flight', 'flight_exception', 'counter_reading', 'stay', 'rating_change', 'opening', 'reset',
    'trace_gap', 'gap_acceptance', 'life_limit'];
  v_records text[] := ARRAY['journal_entry', 'about', 'act', 'signature', 'release', 'package_change', 'document'];
  v_register text[] := ARRAY['airframe_type', 'type_position', 'airframe', 'position', 'engine_model', 'rating',
    'cycle_rule', 'component', 'location', 'slot'];
  v_projections text[] := ARRAY['exposure', 'due_point', 'bucket'];
BEGIN
  FOR v_table IN SELECT table_name FROM information_schema.columns
    WHERE table_schema = 'public' AND column_name = 'operator_id'
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', v_table);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', v_table);
    EXECUTE format('CREATE POLICY own_operator ON %I TO app, auditor '
      'USING (operator_id = (SELECT current_setting(''app.operator_id'')::int)) '
      'WITH CHECK (operator_id = (SELECT current_setting(''app.operator_id'')::int))', v_table);
    EXECUTE format('CREATE POLICY whole_table ON %I TO owner USING (true) WITH CHECK (true)', v_table);
    EXECUTE format('GRANT SELECT ON %I TO app, auditor', v_table);
    EXECUTE format('GRANT INSERT ON %I TO app', v_table);
    IF v_table = ANY (v_facts) THEN
      EXECUTE format('GRANT UPDATE (voided_seq, void_reason) ON %I TO app', v_table);
      EXECUTE format('CREATE TRIGGER fact_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION fact_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER fact_guard', v_table);
    ELSIF v_table = ANY (v_records) THEN
      EXECUTE format('CREATE TRIGGER record_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION record_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER record_guard', v_table);
    ELSIF v_table = ANY (v_register) THEN
      -- what the register says stays as it was entered; a version is counted up, and a row may be locked, by it
      IF EXISTS (SELECT FROM information_schema.columns WHERE table_schema = 'public' AND table_name = v_table
                    AND column_name = 'version') THEN
        EXECUTE format('GRANT UPDATE (version) ON %I TO app', v_table);
      END IF;
    ELSIF v_table = 'work_package' THEN
      GRANT UPDATE (status, version) ON work_package TO app;
    ELSE
      EXECUTE format('GRANT UPDATE ON %I TO app', v_table);
    END IF;
    IF v_table = ANY (v_facts || v_records) THEN
      EXECUTE format('CREATE TRIGGER no_truncate BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION record_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER no_truncate', v_table);
    END IF;
    IF v_table = ANY (v_projections) THEN EXECUTE format('GRANT DELETE ON %I TO app', v_table); END IF;
  END LOOP;
END $$;
GRANT UPDATE (to_at, to_kind, to_text, end_reason, end_package_id, ended_seq) ON stay TO app;
GRANT UPDATE (status, resource, version, body, number) ON act TO app;

ALTER TABLE operator ENABLE ROW LEVEL SECURITY;
ALTER TABLE operator FORCE ROW LEVEL SECURITY;
CREATE POLICY own_operator ON operator TO app, auditor USING (id = (SELECT current_setting('app.operator_id')::int));
CREATE POLICY whole_table ON operator TO owner USING (true) WITH CHECK (true);
GRANT SELECT ON operator TO app, auditor;

-- Sign-in happens before the operator is known: three questions, and nothing else, may be asked without one.
CREATE FUNCTION operators_for_sign_in() RETURNS TABLE (id int, code text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$ SELECT id, code FROM operator ORDER BY id $$;

CREATE FUNCTION person_for_sign_in(p_operator int, p_name text)
RETURNS TABLE (id uuid, password_hash text, disabled_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT id, password_hash, disabled_at FROM person WHERE operator_id = p_operator AND sign_in_name = p_name
$$;

CREATE FUNCTION session_by_token(p_token_hash bytea)
RETURNS TABLE (operator_id int, session_id uuid, person_id uuid, csrf_token text, roles text[], full_name text,
  sign_in_name text, licence text, must_change_password boolean, last_seen_at timestamptz, expires_at timestamptz,
  operator_code text, operator_name text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT s.operator_id, s.id, p.id, s.csrf_token, p.roles, p.full_name, p.sign_in_name, p.licence,
         p.must_change_password, s.last_seen_at, s.expires_at, o.code, o.name
    FROM session s
    JOIN person p ON p.operator_id = s.operator_id AND p.id = s.person_id
    JOIN operator o ON o.id = s.operator_id
   WHERE s.token_hash = p_token_hash AND s.ended_at IS NULL AND s.expires_at > now() AND p.disabled_at IS NULL
$$;

-- The commands that go over every operator (rebuild, verify) ask for the list here and enter each in turn.
REVOKE ALL ON FUNCTION operators_for_sign_in(), person_for_sign_in(int, text), session_by_token(bytea) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION operators_for_sign_in(), person_for_sign_in(int, text), session_by_token(bytea) TO app;
GRANT USAGE ON SCHEMA public TO app, auditor;
