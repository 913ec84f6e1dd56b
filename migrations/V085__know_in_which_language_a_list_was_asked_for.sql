-- What is wrong with single lines is written down by a job before anybody reads it; who reads it is
-- who asked, and nobody else sees a list before it is brought in.
ALTER TABLE import ADD COLUMN language text NOT NULL DEFAULT 'en'
  CHECK (language IN ('en', 'es'));
COMMENT ON COLUMN import.language IS 'In which what came of it is said: that of whoever asked last';
