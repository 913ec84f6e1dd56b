-- A phone or computer that stays signed in for one church; whoever changes something on it says who
-- they are. One that was shut out stays by name, since the history points at it.
CREATE TABLE shared_device (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  church_id   uuid NOT NULL,
  name        text NOT NULL CHECK (length(name) BETWEEN 1 AND 100),
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  made_at     timestamptz NOT NULL,
  used_at     timestamptz NOT NULL,
  ended_at    timestamptz,
  wrong_codes int NOT NULL CHECK (wrong_codes >= 0),
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT shared_device_once UNIQUE (cluster_id, fingerprint)
);
COMMENT ON COLUMN shared_device.wrong_codes IS 'Since a right one, or since an administrator let it go on';
SELECT fence_off('shared_device');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON shared_device FOR EACH ROW EXECUTE FUNCTION keep_change();

CREATE TABLE device_hand (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  church_id   uuid NOT NULL,
  person_id   uuid NOT NULL,
  fingerprint text NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT device_hand_once UNIQUE (cluster_id, church_id, person_id)
);
COMMENT ON TABLE device_hand IS 'Who acts on the shared devices of a church';
COMMENT ON COLUMN device_hand.fingerprint IS 'Argon2id of a short code; empty where the name alone is asked';
SELECT fence_off('device_hand');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON device_hand FOR EACH ROW EXECUTE FUNCTION keep_change();
