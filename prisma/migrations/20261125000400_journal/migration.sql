-- The journal: one entry for one act, chained in its stream, with a row for each thing it concerns.

CREATE SEQUENCE journal_number;
GRANT USAGE ON SEQUENCE journal_number TO app;

-- The number of the act under way: drawn after its locks are held, kept by every fact it records.
CREATE FUNCTION next_journal_number() RETURNS bigint LANGUAGE sql VOLATILE AS $$ SELECT nextval('journal_number') $$;

-- SHA-256(0x00, operator, stream, seq, number, recorded at in microseconds, previous hash, canonical body);
-- all before the body is of fixed width, so no two entries share their bytes.
CREATE FUNCTION journal_hash(p_operator int, p_stream uuid, p_seq bigint, p_number bigint, p_recorded_at timestamptz,
  p_prev bytea, p_body text) RETURNS bytea LANGUAGE sql IMMUTABLE AS $$
  SELECT sha256('\x00'::bytea || int4send(p_operator) || uuid_send(p_stream) || int8send(p_seq) || int8send(p_number)
    || int8send((extract(epoch FROM p_recorded_at) * 1000000)::bigint) || p_prev || convert_to(p_body, 'UTF8'))
$$;

CREATE FUNCTION journal_append(p_operator int, p_number bigint, p_stream uuid, p_kind text, p_person uuid, p_key text,
  p_body text, p_about uuid[]) RETURNS bigint LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_head journal_stream;
  v_at timestamptz;
  v_hash bytea;
BEGIN
  SELECT * INTO v_head FROM journal_stream WHERE operator_id = p_operator AND stream = p_stream FOR NO KEY UPDATE;
  IF NOT FOUND THEN
    INSERT INTO journal_stream (operator_id, stream, seq, hash)
    VALUES (p_operator, p_stream, 0, decode(repeat('00', 32), 'hex')) ON CONFLICT DO NOTHING;
    SELECT * INTO v_head FROM journal_stream WHERE operator_id = p_operator AND stream = p_stream FOR NO KEY UPDATE;
  END IF;
  v_at := clock_timestamp();
  v_hash := journal_hash(p_operator, p_stream, v_head.seq + 1, p_number, v_at, v_head.hash, p_body);
  INSERT INTO journal_entry (operator_id, number, stream, seq, kind, recorded_at, person_id, act_key, body, prev, hash)
  VALUES (p_operator, p_number, p_stream, v_head.seq + 1, p_kind, v_at, p_person, p_key, p_body, v_head.hash, v_hash);
  UPDATE journal_stream SET seq = v_head.seq + 1, hash = v_hash WHERE operator_id = p_operator AND stream = p_stream;
  INSERT INTO about (operator_id, subject, number)
  SELECT DISTINCT p_operator, subject, p_number FROM unnest(p_about || p_stream) AS subject;
  RETURN p_number;
END $$;
