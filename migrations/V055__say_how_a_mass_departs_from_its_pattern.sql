-- A Mass of a pattern remembers when and where the pattern has it, so that whoever comes at the
-- usual hour can be told that it was moved or is not said, and where to go instead.
ALTER TABLE mass
  ADD COLUMN usual_starts    timestamptz,
  ADD COLUMN usual_church_id uuid,
  ADD COLUMN taken_over_by   uuid;

-- Nobody changed anything: that it is known now is no change of a Mass.
ALTER TABLE mass DISABLE TRIGGER keep_change;
UPDATE mass SET
  usual_starts = (mass.pattern_date + pattern.at) AT TIME ZONE cluster.time_zone,
  usual_church_id = pattern.church_id
FROM pattern, cluster
WHERE pattern.cluster_id = mass.cluster_id AND pattern.id = mass.pattern_id
  AND cluster.cluster_id = mass.cluster_id;
ALTER TABLE mass ENABLE TRIGGER keep_change;

ALTER TABLE mass
  ADD CONSTRAINT mass_usual_whole CHECK ((usual_starts IS NULL) = (usual_church_id IS NULL)),
  ADD CONSTRAINT mass_taken_over_is_cancelled CHECK (taken_over_by IS NULL OR cancelled),
  ADD FOREIGN KEY (cluster_id, usual_church_id) REFERENCES church (cluster_id, id),
  ADD FOREIGN KEY (cluster_id, taken_over_by) REFERENCES mass (cluster_id, id)
    ON DELETE SET NULL (taken_over_by);
CREATE INDEX mass_by_usual_start ON mass (cluster_id, usual_starts) WHERE usual_starts IS NOT NULL;
CREATE INDEX mass_taken_over ON mass (cluster_id, taken_over_by) WHERE taken_over_by IS NOT NULL;
