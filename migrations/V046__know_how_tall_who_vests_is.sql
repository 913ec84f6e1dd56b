-- How tall a priest, deacon or bishop is, for an alb in which he does not trip: apart from his name,
-- and gone with it. Nobody else's is kept; servers' albs go by size.
CREATE TABLE person_height (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  centimetres int NOT NULL CHECK (centimetres BETWEEN 120 AND 230),
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES person (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN person_height.id IS 'That of the person';
SELECT fence_off('person_height');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON person_height
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- That it was changed is kept, and what it was is not, so that it can be forgotten.
CREATE FUNCTION keep_height_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    whole jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
BEGIN
    INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
    VALUES (
        (whole ->> 'cluster_id')::uuid, gen_random_uuid(), clock_timestamp(),
        coalesce(current_setting('app.visitor', true), ''), TG_TABLE_NAME, (whole ->> 'id')::uuid,
        CASE TG_OP WHEN 'INSERT' THEN 'entered' WHEN 'UPDATE' THEN 'changed' ELSE 'removed' END,
        '{}', CASE TG_OP WHEN 'UPDATE' THEN '{"centimetres": "another"}'::jsonb ELSE '{}' END);
    RETURN NULL;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON person_height
  FOR EACH ROW EXECUTE FUNCTION keep_height_change();
