-- What the role that the server works as may do: read and write rows. Tables stay their owner's.
DO $$
BEGIN
    IF '${application_role}' NOT IN ('', current_user) THEN
        GRANT USAGE ON SCHEMA public TO "${application_role}";
        GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO "${application_role}";
        GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO "${application_role}";
        REVOKE INSERT, UPDATE, DELETE ON audit FROM "${application_role}";
        REVOKE ALL ON flyway_schema_history FROM "${application_role}";
    END IF;
END
$$;
