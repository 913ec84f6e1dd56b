-- A device may hold a key that lets its user in (W3C Web Authentication): the server keeps the
-- public half alone. Each time it asks for something new to be signed, and takes the answer once.
CREATE TABLE user_passkey (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  user_id    uuid NOT NULL,
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 100),
  credential text NOT NULL CHECK (length(credential) BETWEEN 1 AND 1400),
  key        bytea NOT NULL,
  counter    bigint NOT NULL,
  added_at   timestamptz NOT NULL,
  used_at    timestamptz,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_passkey_once UNIQUE (cluster_id, credential)
);
COMMENT ON COLUMN user_passkey.credential IS 'Credential ID in base64url; at most 1023 bytes (Web Authentication 4)';
COMMENT ON COLUMN user_passkey.key IS 'Attestation object (Web Authentication 6.5.4), with the public key';
COMMENT ON COLUMN user_passkey.counter IS 'Signature counter (Web Authentication 6.1.1) of the last use; 0 where the device keeps none';
CREATE INDEX user_passkey_by_user ON user_passkey (cluster_id, user_id);

CREATE TABLE passkey_challenge (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  user_id     uuid,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  ends_at     timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT passkey_challenge_once UNIQUE (cluster_id, fingerprint)
);
COMMENT ON TABLE passkey_challenge IS 'What is to be signed; gone with the first answer';
COMMENT ON COLUMN passkey_challenge.user_id IS 'Who adds a device; null for somebody who signs in';

SELECT fence_off('user_passkey');
SELECT fence_off('passkey_challenge');
CREATE TRIGGER keep_change AFTER INSERT OR DELETE ON user_passkey FOR EACH ROW EXECUTE FUNCTION keep_way_in();
