-- That somebody looked at a week and signed it, with the week as it stood: it is never changed, and
-- whoever signs again signs upon the last. People are in it by id alone, so that one who is removed
-- for good has no name in it either.
CREATE TABLE signed_week (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  monday     date NOT NULL CHECK (extract(isodow FROM monday) = 1),
  turn       int NOT NULL CHECK (turn >= 1),
  signed_at  timestamptz NOT NULL,
  visitor    text NOT NULL,
  note       text NOT NULL CHECK (length(note) <= 2000),
  week       jsonb NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT signed_week_in_turn UNIQUE (cluster_id, monday, turn)
);
COMMENT ON COLUMN signed_week.turn IS 'The first signature of a week is 1; of two at the same moment one comes too late';
COMMENT ON COLUMN signed_week.visitor IS 'Who signed, as the history knows them';
SELECT fence_off('signed_week');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON signed_week FOR EACH ROW EXECUTE FUNCTION announce_change();

-- What was signed is a record by itself and stays; the note alone can lose a name that is to be
-- forgotten.
CREATE FUNCTION keep_as_signed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF to_jsonb(OLD) - 'note' IS DISTINCT FROM to_jsonb(NEW) - 'note' THEN
        RAISE EXCEPTION 'a signed week is never changed'
            USING ERRCODE = 'check_violation', CONSTRAINT = 'signed_week_stays';
    END IF;
    RETURN NEW;
END
$$;
CREATE TRIGGER keep_as_signed BEFORE UPDATE ON signed_week FOR EACH ROW EXECUTE FUNCTION keep_as_signed();

-- A note speaks of people by their surnames. Triggers fire in the order of their names: this one
-- comes before carry_out_erasure.
CREATE FUNCTION carry_erasure_into_reviews() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['signed_week.note'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER carry_erasure_into_reviews BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION carry_erasure_into_reviews();
