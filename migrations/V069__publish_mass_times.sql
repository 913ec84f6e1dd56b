-- Mass times as they were published for the people: they stay so until the next press.
CREATE TABLE published_times (
  cluster_id   uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id           uuid NOT NULL,
  turn         int NOT NULL CHECK (turn >= 1),
  published_at timestamptz NOT NULL,
  visitor      text NOT NULL,
  first_day    date NOT NULL,
  last_day     date NOT NULL CHECK (last_day >= first_day),
  times        jsonb NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT published_times_in_turn UNIQUE (cluster_id, turn)
);
COMMENT ON COLUMN published_times.turn IS 'The first is 1; of two at the same moment one comes too late';
COMMENT ON COLUMN published_times.visitor IS 'Who published, as the history knows them';
SELECT fence_off('published_times');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON published_times FOR EACH ROW EXECUTE FUNCTION announce_change();
