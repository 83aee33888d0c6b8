-- Paints are numbered P-01 and on: the highest number without reading the others.
CREATE INDEX subject_paint ON subject (CAST(substr(subject, 3) AS INTEGER)) WHERE class = 'paint';
