-- Stock is taken of a church by walking through its sacristy; the inventory is as old as the last
-- time. Every line is what somebody saw of one piece, so that two phones can tick at once.
CREATE TABLE stocktake (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  church_id  uuid NOT NULL,
  begun_at   timestamptz NOT NULL,
  begun_by   text NOT NULL,
  held_on    date,
  closed_at  timestamptz,
  closed_by  text NOT NULL,
  elsewhere  boolean NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT stocktake_closed_is_dated CHECK ((closed_at IS NULL) = (held_on IS NULL))
);
COMMENT ON COLUMN stocktake.begun_by IS 'Mark of the visitor as in audit';
COMMENT ON COLUMN stocktake.held_on IS 'The date of the inventory; empty while it is under way';
COMMENT ON COLUMN stocktake.elsewhere IS 'Made on paper or in another list; it has no lines';
CREATE UNIQUE INDEX stocktake_one_at_a_time ON stocktake (cluster_id, church_id) WHERE closed_at IS NULL;
CREATE UNIQUE INDEX stocktake_elsewhere_once ON stocktake (cluster_id, church_id, held_on) WHERE elsewhere;
SELECT fence_off('stocktake');

CREATE TABLE stocktake_line (
  cluster_id   uuid NOT NULL,
  id           uuid NOT NULL,
  stocktake_id uuid NOT NULL,
  piece_id     uuid NOT NULL,
  place        text NOT NULL,
  expected     boolean NOT NULL,
  finding      text NOT NULL CHECK (finding IN ('', 'there', 'missing', 'elsewhere', 'damaged')),
  note         text NOT NULL,
  found_at     timestamptz,
  settled      text NOT NULL,
  version      int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT stocktake_line_once UNIQUE (cluster_id, stocktake_id, piece_id),
  FOREIGN KEY (cluster_id, stocktake_id) REFERENCES stocktake (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT counted_piece_stays FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id)
);
COMMENT ON COLUMN stocktake_line.place IS 'Where it was looked for';
COMMENT ON COLUMN stocktake_line.expected IS 'At home in that church; else somebody came upon it';
COMMENT ON COLUMN stocktake_line.settled IS 'What was done about it, as a sentence; empty while nothing was';
SELECT fence_off('stocktake_line');

DO $$
DECLARE
    kept text;
BEGIN
    FOREACH kept IN ARRAY ARRAY['stocktake', 'stocktake_line'] LOOP
        EXECUTE format(
            'CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION announce_change()', kept);
    END LOOP;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON stocktake
  FOR EACH ROW EXECUTE FUNCTION keep_change();
-- That a line was made ready tells nothing; what was found and done does.
CREATE TRIGGER keep_change AFTER UPDATE ON stocktake_line
  FOR EACH ROW EXECUTE FUNCTION keep_change();
