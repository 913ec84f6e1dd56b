-- Every other row goes with its cluster; one that stayed would meet the cluster when it comes back
-- from its backup.
DELETE FROM mass_change c WHERE NOT EXISTS (SELECT 1 FROM cluster k WHERE k.cluster_id = c.cluster_id);
ALTER TABLE mass_change
  ADD CONSTRAINT mass_change_cluster_id_fkey FOREIGN KEY (cluster_id) REFERENCES cluster ON DELETE CASCADE;
