-- Celebrants that were named at one press, with what was before, so that one press undoes it. What
-- became of each Mass stands in the history of that Mass; people are in here by their ids alone.
CREATE TABLE assignment (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  assigned_at timestamptz NOT NULL,
  undone_at   timestamptz,
  moves       jsonb NOT NULL,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN assignment.moves IS 'For each Mass the state before, and who is named now';
SELECT fence_off('assignment');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON assignment
  FOR EACH ROW EXECUTE FUNCTION announce_change();
