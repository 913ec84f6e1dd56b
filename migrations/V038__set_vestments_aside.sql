-- Somebody sets a set, or a piece of no set, aside for one Mass: a reservation, whose pieces are taken
-- by one row of occupation each, so that the database refuses whoever wants one of them as well.
CREATE TABLE reservation (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  church_id  uuid NOT NULL,
  set_id     uuid,
  piece_id   uuid,
  state      text NOT NULL CHECK (state IN ('held', 'out', 'returned', 'released')),
  made_by    text NOT NULL,
  made_at    timestamptz NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT reservation_of_set_or_piece CHECK (num_nonnulls(set_id, piece_id) = 1),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, set_id) REFERENCES vestment_set (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN reservation.made_by IS 'Id of the user, as in the history; no name, so that names can be forgotten';
COMMENT ON COLUMN reservation.church_id IS 'Where the Mass was when they were set aside';
CREATE INDEX reservation_by_mass ON reservation (cluster_id, mass_id);
SELECT fence_off('reservation');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON reservation FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON reservation FOR EACH ROW EXECUTE FUNCTION announce_change();

ALTER TABLE occupation ADD COLUMN reservation_id uuid;
COMMENT ON COLUMN occupation.reservation_id IS 'By which it is held or out';
ALTER TABLE occupation ADD CONSTRAINT occupation_of_reservation
  FOREIGN KEY (cluster_id, reservation_id) REFERENCES reservation (cluster_id, id) ON DELETE CASCADE;
CREATE INDEX occupation_by_reservation ON occupation (cluster_id, reservation_id) WHERE reservation_id IS NOT NULL;
