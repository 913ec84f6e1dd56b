-- When somebody from outside comes to a Mass, and whether he says that he brings his own vestments.
-- What is set out for him follows from what the Mass itself says.
CREATE TABLE arrival (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  person_id  uuid NOT NULL,
  arrives    timestamptz NOT NULL,
  brings     text NOT NULL CHECK (brings IN ('not-said', 'own', 'nothing')),
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT arrival_once UNIQUE (cluster_id, mass_id, person_id)
);
CREATE INDEX arrival_by_time ON arrival (cluster_id, arrives);
SELECT fence_off('arrival');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON arrival
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON arrival
  FOR EACH ROW EXECUTE FUNCTION announce_change();
