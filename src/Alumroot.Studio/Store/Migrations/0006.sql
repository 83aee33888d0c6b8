-- Exposures are numbered E-01 and on: the highest number without reading the others.
CREATE INDEX subject_exposure ON subject (CAST(substr(subject, 3) AS INTEGER)) WHERE class = 'exposure';
