-- What the sacristans of a church were told last of the week that the letter of the week began, so
-- that what has changed since can be told. It names nobody: Masses, pieces and churches alone.
CREATE TABLE sacristy_told (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  day        date NOT NULL,
  week       jsonb NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES church (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN sacristy_told.id IS 'That of the church';
COMMENT ON COLUMN sacristy_told.day IS 'The day on which the letter of the week left; it tells of that day and the seven after it';
SELECT fence_off('sacristy_told');

-- That something was changed which a sacristy may have been told of: one row for each transaction,
-- so that no two wait for each other. It goes once what was told is compared with what is.
CREATE TABLE sacristy_change (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  at         timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN sacristy_change.id IS 'Made of the number of the transaction';
SELECT fence_off('sacristy_change');

-- Nothing is noted in a cluster where nobody was told anything, nor in one that is being removed.
CREATE FUNCTION note_change_for_sacristies() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    here uuid := coalesce(NEW.cluster_id, OLD.cluster_id);
BEGIN
    IF EXISTS (SELECT 1 FROM sacristy_told t JOIN cluster c ON c.cluster_id = t.cluster_id
               WHERE t.cluster_id = here) THEN
        INSERT INTO sacristy_change (cluster_id, id, at)
        VALUES (here, md5('sacristy ' || pg_current_xact_id()::text)::uuid, now())
        ON CONFLICT (cluster_id, id) DO NOTHING;
    END IF;
    RETURN NULL;
END
$$;

DO $$
DECLARE
    told text;
BEGIN
    FOREACH told IN ARRAY ARRAY['occupation', 'movement', 'asking', 'piece', 'accepted_step', 'absence']
    LOOP
        EXECUTE format(
            'CREATE TRIGGER note_for_sacristies AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION note_change_for_sacristies()', told);
    END LOOP;
END
$$;
-- What patterns yield anew, far ahead, is nothing that anybody was told of.
CREATE TRIGGER note_for_sacristies AFTER UPDATE OR DELETE ON mass
  FOR EACH ROW EXECUTE FUNCTION note_change_for_sacristies();
CREATE TRIGGER note_entry_for_sacristies AFTER INSERT ON mass
  FOR EACH ROW WHEN (NEW.touched) EXECUTE FUNCTION note_change_for_sacristies();

ALTER TABLE letter_wish ADD COLUMN sacristy boolean;
UPDATE letter_wish SET sacristy = changes;
ALTER TABLE letter_wish ALTER COLUMN sacristy SET NOT NULL;
