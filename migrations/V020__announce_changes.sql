-- Open pages show what others change. Whoever writes a row that a page shows rings a bell in the
-- same transaction, so that no program can forget it; equal announcements of one transaction are
-- one. It names the cluster and nothing of what was written.
CREATE FUNCTION announce_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    PERFORM pg_notify('vestiary_change', coalesce(NEW.cluster_id, OLD.cluster_id)::text);
    RETURN NULL;
END
$$;

DO $$
DECLARE
    shown text;
BEGIN
    FOREACH shown IN ARRAY ARRAY[
        'cluster', 'parish', 'church', 'journey', 'person', 'pattern', 'mass', 'suit',
        'vestment_set', 'piece', 'occupation', 'proper', 'proper_church', 'plan', 'movement', 'asking',
        'consent', 'applied_remedy', 'accepted_step']
    LOOP
        EXECUTE format(
            'CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION announce_change()', shown);
    END LOOP;
END
$$;
