-- Who was asked for, or usually celebrates a Mass, where somebody else was named in his place: so he
-- is named again once he can. It holds as long as that other one is named.
CREATE TABLE asked_celebrant (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  asked_id   uuid NOT NULL,
  named_id   uuid NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, asked_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, named_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN asked_celebrant.id IS 'That of the Mass';
SELECT fence_off('asked_celebrant');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON asked_celebrant
  FOR EACH ROW EXECUTE FUNCTION announce_change();
