-- A church closes and a parish is merged into another; both keep their ids, their past Masses and
-- all that was ever done in them. What was decreed is kept beside it, and never changed.
ALTER TABLE church ADD COLUMN closed_from date;
COMMENT ON COLUMN church.closed_from IS 'First date on which no Mass is said there any more';

ALTER TABLE parish
  ADD COLUMN merged_into_id uuid,
  ADD COLUMN merged_from    date,
  ADD FOREIGN KEY (cluster_id, merged_into_id) REFERENCES parish (cluster_id, id),
  ADD CONSTRAINT parish_merged_whole CHECK ((merged_into_id IS NULL) = (merged_from IS NULL)),
  ADD CONSTRAINT parish_merged_into_another CHECK (merged_into_id <> id);

CREATE TABLE merger (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  kind       text NOT NULL CHECK (kind IN ('closing', 'opening', 'goods', 'merging')),
  church_id  uuid,
  parish_id  uuid,
  to_id      uuid,
  holds_from date NOT NULL,
  pieces     int NOT NULL CHECK (pieces >= 0),
  note       text NOT NULL CHECK (length(note) <= 2000),
  noted_at   timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, parish_id) REFERENCES parish (cluster_id, id)
);
COMMENT ON COLUMN merger.to_id IS 'The parish it was merged into, or the church to which the pieces went home';
COMMENT ON COLUMN merger.note IS 'The decree, as it was typed';
SELECT fence_off('merger');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON merger
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON merger
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- A decree names its bishop, and a note anybody. Triggers fire in the order of their names: this
-- one comes before carry_out_erasure.
CREATE FUNCTION carry_erasure_into_mergers() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['merger.note'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER carry_erasure_into_mergers BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION carry_erasure_into_mergers();
