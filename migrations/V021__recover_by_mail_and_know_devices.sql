-- Whoever forgot the password is mailed a link, at an address that was proven before; and a browser
-- that came in by its user's password once is known again, so that others who guess at that name
-- from the same address cannot keep its user waiting.
CREATE TABLE user_mail (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  address     text NOT NULL CHECK (length(address) <= 254),
  wanted      text NOT NULL CHECK (length(wanted) <= 254),
  fingerprint text NOT NULL CHECK (length(fingerprint) IN (0, 64)),
  ends_at     timestamptz NOT NULL,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN user_mail.id IS 'That of the user';
COMMENT ON COLUMN user_mail.address IS 'Proven by a link that was mailed there; empty while none is';
COMMENT ON COLUMN user_mail.wanted IS 'Typed and not proven yet; takes the place of the proven one when it is';
COMMENT ON COLUMN user_mail.fingerprint IS 'Of the link that proves it, good until ends_at; empty while none is out';

CREATE TABLE user_device (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  user_id     uuid NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  ends_at     timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_device_once UNIQUE (cluster_id, user_id, fingerprint)
);
COMMENT ON TABLE user_device IS 'Browsers that came in by a password; they are let in by nothing here, only counted apart';

ALTER TABLE failed_sign_in
  ADD COLUMN kind text NOT NULL DEFAULT 'password' CHECK (kind IN ('password', 'recovery', 'proof')),
  ADD COLUMN device text NOT NULL DEFAULT '';
COMMENT ON COLUMN failed_sign_in.kind IS 'What was tried: a password, a link asked for by mail, an address to be proven';
COMMENT ON COLUMN failed_sign_in.device IS 'Fingerprint of a browser that its user came in by before; empty for every other';

SELECT fence_off('user_mail');
SELECT fence_off('user_device');

-- That a way to come in was added, changed or taken away is kept, and neither address nor key.
CREATE FUNCTION keep_way_in() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    whole jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
BEGIN
    INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
    VALUES (
        (whole ->> 'cluster_id')::uuid, gen_random_uuid(), clock_timestamp(),
        coalesce(current_setting('app.visitor', true), ''), TG_TABLE_NAME,
        coalesce(whole ->> 'user_id', whole ->> 'id')::uuid,
        CASE TG_OP WHEN 'INSERT' THEN 'entered' WHEN 'UPDATE' THEN 'changed' ELSE 'removed' END,
        '{}', '{}');
    RETURN NULL;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR DELETE ON user_mail FOR EACH ROW EXECUTE FUNCTION keep_way_in();
CREATE TRIGGER keep_proof AFTER UPDATE ON user_mail FOR EACH ROW
    WHEN (OLD.address <> NEW.address) EXECUTE FUNCTION keep_way_in();
