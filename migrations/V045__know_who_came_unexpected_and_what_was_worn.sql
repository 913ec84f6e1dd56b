-- Five minutes before Mass one more has come: what was found for him, so that it can be taken back.
CREATE TABLE one_more (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  role       text NOT NULL CHECK (role IN ('concelebrant', 'deacon')),
  own        boolean NOT NULL,
  pieces     text[] NOT NULL,
  held       uuid[] NOT NULL,
  steps      jsonb NOT NULL,
  taken_at   timestamptz NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN one_more.own IS 'Whether he came with vestments of his own';
COMMENT ON COLUMN one_more.pieces IS 'Codes, as they were then';
COMMENT ON COLUMN one_more.held IS 'Ids of the occupations that hold them';
COMMENT ON COLUMN one_more.steps IS 'Lawful substitutes that were accepted for him';
CREATE INDEX one_more_by_mass ON one_more (cluster_id, mass_id, taken_at);
SELECT fence_off('one_more');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON one_more
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- What was really worn, where it was not as planned: a piece that lay ready and was not worn, or one
-- that was worn although nobody had planned it. Nothing said means: as planned.
CREATE TABLE worn (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  piece_id   uuid NOT NULL,
  worn       boolean NOT NULL,
  instead_of uuid,
  worn_at    timestamptz NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, instead_of) REFERENCES piece (cluster_id, id) ON DELETE SET NULL (instead_of),
  CONSTRAINT worn_said_once UNIQUE (cluster_id, mass_id, piece_id)
);
COMMENT ON COLUMN worn.instead_of IS 'The piece that was planned and not worn; empty if there was none';
COMMENT ON COLUMN worn.worn_at IS 'When the Mass began';
CREATE INDEX worn_by_piece ON worn (cluster_id, piece_id, worn_at);
CREATE INDEX worn_by_time ON worn (cluster_id, worn_at);
SELECT fence_off('worn');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON worn
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON worn
  FOR EACH ROW EXECUTE FUNCTION announce_change();
