-- A diocese may have a service of its own by which people sign in (OpenID Connect). A user is known
-- there by issuer and subject alone, which never pass to somebody else; mail addresses do.
CREATE TABLE user_outside (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  issuer     text NOT NULL CHECK (length(issuer) BETWEEN 1 AND 500),
  subject    text NOT NULL CHECK (length(subject) BETWEEN 1 AND 255),
  linked_at  timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_outside_once UNIQUE (cluster_id, issuer, subject)
);
COMMENT ON COLUMN user_outside.id IS 'That of the user';
COMMENT ON COLUMN user_outside.subject IS 'At most 255 characters (OpenID Connect Core 1.0, 2)';

CREATE TABLE outside_sign_in (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  user_id     uuid,
  link        text NOT NULL,
  back        text NOT NULL,
  ends_at     timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT outside_sign_in_once UNIQUE (cluster_id, fingerprint)
);
COMMENT ON TABLE outside_sign_in IS 'Begun, and gone with the first return from that service';
COMMENT ON COLUMN outside_sign_in.user_id IS 'Who links their account to that service; null for somebody who signs in';
COMMENT ON COLUMN outside_sign_in.link IS 'Fingerprint of the link by which somebody was let in; empty without one';

SELECT fence_off('user_outside');
SELECT fence_off('outside_sign_in');
CREATE TRIGGER keep_change AFTER INSERT OR DELETE ON user_outside FOR EACH ROW EXECUTE FUNCTION keep_way_in();
