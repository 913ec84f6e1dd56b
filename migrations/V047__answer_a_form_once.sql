-- A form that is sent again, because a lost connection kept its answer back, is answered as it was
-- the first time. Nothing of what was typed is here, and nobody: the key is one hash of form, address
-- and sender.
CREATE TABLE sent_form (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  key        text NOT NULL,
  begun_at   timestamptz NOT NULL,
  leads_to   text NOT NULL,
  answered   boolean NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT sent_form_once UNIQUE (cluster_id, key)
);
COMMENT ON COLUMN sent_form.leads_to IS 'Where its answer led; empty while it is worked on';
CREATE INDEX sent_form_by_time ON sent_form (cluster_id, begun_at);
SELECT fence_off('sent_form');
