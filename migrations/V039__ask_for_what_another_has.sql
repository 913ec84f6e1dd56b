-- Who wants a set that another has, or whose owner wants to be asked: a question to whoever keeps it,
-- and a place in the queue for when it becomes free.
CREATE TABLE wish (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  mass_id     uuid NOT NULL,
  church_id   uuid NOT NULL,
  set_id      uuid,
  piece_id    uuid,
  keeper_id   uuid NOT NULL,
  state       text NOT NULL CHECK (state IN ('open', 'granted', 'refused', 'withdrawn')),
  note        text NOT NULL,
  asked_by    text NOT NULL,
  asked_at    timestamptz NOT NULL,
  answer      text NOT NULL,
  answered_by text NOT NULL,
  answered_at timestamptz,
  told_at     timestamptz,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT wish_for_set_or_piece CHECK (num_nonnulls(set_id, piece_id) = 1),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, keeper_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, set_id) REFERENCES vestment_set (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN wish.church_id IS 'Of the Mass, whose sacristan asks';
COMMENT ON COLUMN wish.keeper_id IS 'Church whose sacristan answers: where it is held, else where it is at home';
COMMENT ON COLUMN wish.asked_by IS 'Id of the user, as in the history; likewise answered_by, which is empty until then';
COMMENT ON COLUMN wish.told_at IS 'When it was said that it is free; once and never again';
CREATE UNIQUE INDEX wish_once ON wish (cluster_id, mass_id, coalesce(set_id, piece_id)) WHERE state = 'open';
CREATE INDEX wish_by_time ON wish (cluster_id, asked_at);
SELECT fence_off('wish');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON wish FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON wish FOR EACH ROW EXECUTE FUNCTION announce_change();
