-- A package that is released or withdrawn stays so: nobody opens it again, and no picture is added to what it holds.
CREATE FUNCTION closed_package_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.status <> 'open' THEN
    RAISE EXCEPTION 'the package is %', OLD.status
      USING ERRCODE = 'SB010', DETAIL = jsonb_build_object('status', OLD.status)::text;
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER closed_package_guard BEFORE UPDATE ON work_package FOR EACH ROW EXECUTE FUNCTION closed_package_guard();
ALTER TABLE work_package ENABLE ALWAYS TRIGGER closed_package_guard;

CREATE FUNCTION frozen_picture_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_status text;
BEGIN
  SELECT w.status INTO v_status FROM step_entry e
    JOIN work_package w ON w.operator_id = e.operator_id AND w.id = e.package_id
   WHERE e.operator_id = NEW.operator_id AND e.id = NEW.entry_id FOR SHARE OF w;
  IF v_status <> 'open' THEN
    RAISE EXCEPTION 'the package is %', v_status USING ERRCODE = 'SB010', DETAIL = jsonb_build_object('status', v_status)::text;
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER frozen_picture_guard BEFORE INSERT ON step_photo FOR EACH ROW EXECUTE FUNCTION frozen_picture_guard();
ALTER TABLE step_photo ENABLE ALWAYS TRIGGER frozen_picture_guard;

-- What is entered and signed in a step is of the step's own package: else another package, still open, would let it in.
CREATE FUNCTION step_of_package_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_package uuid;
BEGIN
  SELECT package_id INTO v_package FROM work_step WHERE operator_id = NEW.operator_id AND id = NEW.step_id;
  -- No such step is refused by its key, and one of another operator by the wall.
  IF v_package <> NEW.package_id THEN
    RAISE EXCEPTION 'the step is of another package' USING ERRCODE = 'SB011';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER step_of_package_guard BEFORE INSERT ON step_entry FOR EACH ROW EXECUTE FUNCTION step_of_package_guard();
ALTER TABLE step_entry ENABLE ALWAYS TRIGGER step_of_package_guard;
CREATE TRIGGER step_of_package_guard BEFORE INSERT ON step_signature FOR EACH ROW EXECUTE FUNCTION step_of_package_guard();
ALTER TABLE step_signature ENABLE ALWAYS TRIGGER step_of_package_guard;

-- As before; and the covered signature stands, on the content that is inspected.
CREATE OR REPLACE FUNCTION inspection_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_done record;
BEGIN
  IF NEW.meaning <> 'inspection' THEN RETURN NEW; END IF;
  SELECT st.step_id, st.content_hash, si.person_id INTO v_done
    FROM step_signature st JOIN signature si ON si.operator_id = st.operator_id AND si.id = st.signature_id
   WHERE st.operator_id = NEW.operator_id AND st.id = NEW.covers_id AND st.meaning = 'done' AND st.voided_seq IS NULL;
  IF (v_done.step_id, v_done.content_hash) IS DISTINCT FROM (NEW.step_id, NEW.content_hash) THEN
    RAISE EXCEPTION 'an inspection covers the work of its own step' USING ERRCODE = 'SB011';
  END IF;
  IF NEW.reinspection_reason IS NULL AND v_done.person_id =
     (SELECT person_id FROM signature WHERE operator_id = NEW.operator_id AND id = NEW.signature_id) THEN
    RAISE EXCEPTION 'who did the work does not inspect it' USING ERRCODE = 'SB012';
  END IF;
  RETURN NEW;
END $$;
