-- Photographs of pieces and of what ails them: made anew by the server, small, without anything that
-- the camera wrote into them. The pictures lie apart, so that no list, copy or history carries them.
CREATE TABLE photo (
  cluster_id    uuid NOT NULL,
  id            uuid NOT NULL,
  piece_id      uuid NOT NULL,
  occupation_id uuid,
  width         int NOT NULL CHECK (width BETWEEN 1 AND 1600),
  height        int NOT NULL CHECK (height BETWEEN 1 AND 1600),
  added_at      timestamptz NOT NULL,
  version       int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, occupation_id) REFERENCES occupation (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN photo.occupation_id IS 'The time in care whose cause it shows; empty for a picture of the piece';
CREATE INDEX photo_by_piece ON photo (cluster_id, piece_id, added_at);
SELECT fence_off('photo');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON photo
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON photo
  FOR EACH ROW EXECUTE FUNCTION announce_change();

CREATE TABLE photo_picture (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  photo_id   uuid NOT NULL,
  small      boolean NOT NULL,
  jpeg       bytea NOT NULL CHECK (octet_length(jpeg) < 4194304),
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT photo_picture_once UNIQUE (cluster_id, photo_id, small),
  FOREIGN KEY (cluster_id, photo_id) REFERENCES photo (cluster_id, id) ON DELETE CASCADE
);
SELECT fence_off('photo_picture');
