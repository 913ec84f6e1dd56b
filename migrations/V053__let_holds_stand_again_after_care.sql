-- Damage that is reported breaks what is held of the piece. Where the piece is back sooner, or the
-- report was a mistake, what it broke stands again; so each row knows what broke it.
ALTER TABLE occupation ADD COLUMN broken_by uuid;
COMMENT ON COLUMN occupation.broken_by IS 'Id of the care for which it stands no longer';
CREATE INDEX occupation_by_care ON occupation (cluster_id, broken_by) WHERE broken_by IS NOT NULL;
