-- That another cluster was merged into this one, or this one was split, by whoever keeps the server:
-- written by the owner of the tables, and never changed.
CREATE TABLE regrouping (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  kind       text NOT NULL CHECK (kind IN ('merged', 'split-off', 'split-from')),
  other      uuid NOT NULL,
  other_name text NOT NULL,
  other_word text NOT NULL,
  archive    text NOT NULL,
  at         timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT regrouping_with_another CHECK (other <> cluster_id)
);
COMMENT ON COLUMN regrouping.other IS 'The cluster that ended in this one, or that the split made or was made from';
COMMENT ON COLUMN regrouping.archive IS 'File with the cluster as it was before';
SELECT fence_off('regrouping');
CREATE TRIGGER keep_change AFTER INSERT ON regrouping FOR EACH ROW EXECUTE FUNCTION keep_change();

-- What two clusters lent each other is over before they become one, and stays to be read.
ALTER TABLE lending DROP CONSTRAINT lending_goes_elsewhere;
ALTER TABLE lending ADD CONSTRAINT lending_goes_elsewhere
  CHECK (borrower_id <> cluster_id OR state IN ('declined', 'withdrawn', 'returned'));
