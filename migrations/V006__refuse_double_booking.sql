-- Two people can never hold one chasuble: the database refuses it, not a check in code.
-- One row a piece and a stretch of time, half-open; an empty end means until further notice.
CREATE TABLE occupation (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  piece_id   uuid NOT NULL,
  state      text NOT NULL CHECK (state IN ('planned', 'held', 'out', 'care')),
  starts     timestamptz NOT NULL,
  ends       timestamptz,
  during     tstzrange NOT NULL GENERATED ALWAYS AS (tstzrange(starts, ends, '[)')) STORED,
  church_id  uuid,
  mass_id    uuid,
  reason     text NOT NULL,
  standing   boolean NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id),
  CONSTRAINT occupation_ends_after_start CHECK (ends IS NULL OR ends > starts),
  CONSTRAINT occupation_one_at_a_time
    EXCLUDE USING gist (cluster_id WITH =, piece_id WITH =, during WITH &&) WHERE (standing)
);
COMMENT ON COLUMN occupation.church_id IS 'Where the piece is meanwhile; empty when outside the cluster (cleaner, mender, loan)';
