-- Who may come in: people with a role, their sessions, the tokens of their programs, links to
-- choose a password by, and the tries that failed. Of every secret only a fingerprint is kept.
CREATE TABLE app_user (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  login      text NOT NULL CHECK (length(login) BETWEEN 1 AND 100),
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  role       text NOT NULL CHECK (role IN ('administrator', 'sacristan', 'pastor', 'minister', 'reader')),
  password   text NOT NULL,
  demo       boolean NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN app_user.password IS 'Argon2id with its salt and parameters; empty while none was chosen';
COMMENT ON COLUMN app_user.demo IS 'Invented, and let in by one press as long as the cluster is the demo';
CREATE UNIQUE INDEX user_login_once ON app_user (cluster_id, lower(login));

CREATE TABLE user_church (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  user_id    uuid NOT NULL,
  church_id  uuid NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_church_once UNIQUE (cluster_id, user_id, church_id)
);

CREATE TABLE user_session (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  user_id     uuid NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  opened_at   timestamptz NOT NULL,
  seen_at     timestamptz NOT NULL,
  ends_at     timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_session_once UNIQUE (cluster_id, fingerprint)
);
CREATE INDEX user_session_by_user ON user_session (cluster_id, user_id);

CREATE TABLE user_token (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  user_id     uuid NOT NULL,
  name        text NOT NULL CHECK (length(name) BETWEEN 1 AND 100),
  looks_only  boolean NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  made_at     timestamptz NOT NULL,
  ends_at     timestamptz NOT NULL,
  used_at     timestamptz,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_token_once UNIQUE (cluster_id, fingerprint)
);
CREATE INDEX user_token_by_user ON user_token (cluster_id, user_id);

CREATE TABLE user_link (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  user_id     uuid NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) = 64),
  ends_at     timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, user_id) REFERENCES app_user (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT user_link_once UNIQUE (cluster_id, fingerprint)
);
COMMENT ON TABLE user_link IS 'Good for choosing a password once, and then gone';

CREATE TABLE failed_sign_in (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  login      text NOT NULL,
  address    text NOT NULL,
  at         timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
CREATE INDEX failed_sign_in_by_time ON failed_sign_in (cluster_id, at);
