-- What lists show of a subject beyond its title. Rows of an older projection are worked out anew when the studio is opened.
ALTER TABLE subject ADD COLUMN projection INTEGER NOT NULL DEFAULT 1;
ALTER TABLE subject ADD COLUMN dyestuff TEXT NOT NULL DEFAULT '';
ALTER TABLE subject ADD COLUMN salt TEXT NOT NULL DEFAULT '';
ALTER TABLE subject ADD COLUMN pigment_kg REAL NULL;
ALTER TABLE subject ADD COLUMN due_unix_ms INTEGER NULL;
ALTER TABLE subject ADD COLUMN due_zone_minutes INTEGER NULL;
ALTER TABLE subject ADD COLUMN tags TEXT NOT NULL DEFAULT '';
CREATE INDEX subject_due ON subject (due_unix_ms) WHERE due_unix_ms IS NOT NULL;
CREATE INDEX subject_stage ON subject (class, stage, last_unix_ms DESC);
CREATE INDEX subject_class ON subject (class, last_unix_ms DESC);
