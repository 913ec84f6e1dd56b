-- A user may be somebody of the schedule, and so see what concerns him. Each person is one user at
-- most; whoever is erased from the schedule leaves the user who they are.
ALTER TABLE app_user ADD COLUMN person_id uuid;
ALTER TABLE app_user ADD FOREIGN KEY (cluster_id, person_id)
  REFERENCES person (cluster_id, id) ON DELETE SET NULL (person_id);
ALTER TABLE app_user ADD CONSTRAINT user_person_once UNIQUE (cluster_id, person_id);
